using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>Every sentence of prose and cautions with the entries that have it, up to date entry by entry.</summary>
internal sealed partial class SentenceIndex
{
    /// <summary>Shorter ones, such as "It jumps.", people will write twice.</summary>
    private const int FewestWords = 6;

    private readonly Dictionary<string, List<(string Entry, SourceSpan Span)>> _places = [];
    private readonly Dictionary<string, IReadOnlyList<(string Key, SourceSpan Span)>> _byEntry = [];

    public SentenceIndex(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
            Replace(entry.Name, entry);
    }

    public IReadOnlyList<(string Key, SourceSpan Span)> Of(Entry entry) => _byEntry.GetValueOrDefault(entry.Name, []);

    /// <summary>Where another entry has the sentence, the first one found.</summary>
    public (string Entry, SourceSpan Span)? Elsewhere(string key, Entry entry)
    {
        var others = _places.GetValueOrDefault(key, []).Where(p => p.Entry != entry.Name);
        return others.Cast<(string, SourceSpan)?>().FirstOrDefault();
    }

    /// <summary>An entry as it is now, or nothing when there is none of that name any more.</summary>
    public void Replace(string name, Entry? entry)
    {
        foreach (var (key, _) in _byEntry.GetValueOrDefault(name, []))
            _places[key].RemoveAll(p => p.Entry == name);
        _byEntry[name] = entry is null ? [] : [.. Sentences(entry)];
        foreach (var (key, span) in _byEntry[name])
        {
            if (!_places.TryGetValue(key, out var places))
                _places[key] = places = [];
            places.Add((name, span));
        }
    }

    private static IEnumerable<(string Key, SourceSpan Span)> Sentences(Entry entry)
    {
        foreach (var caution in entry.Cautions.Where(c => IsLong(c.Value)))
            yield return (Plain(caution.Value), caution.Span);
        var line = 0;
        foreach (var paragraph in entry.Prose.Markdown.Split("\n\n"))
        {
            foreach (var sentence in EndOfSentence().Split(paragraph).Where(IsLong))
                yield return (Plain(sentence), LineOf(entry.Prose, line));
            line += paragraph.Count(c => c == '\n') + 2;
        }
    }

    private static bool IsLong(string sentence) => Words(sentence).Length >= FewestWords;

    private static string Plain(string sentence) =>
        string.Join(' ', Words(Link().Replace(sentence, "$1").ToLowerInvariant())).TrimEnd('.', '!', '?');

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static SourceSpan LineOf(Species.Prose prose, int line)
    {
        var start = prose.Start.Start with { Line = prose.Start.Start.Line + line, Column = 1 };
        return prose.Start with { Start = start, End = start.Right(1) };
    }

    [GeneratedRegex(@"(?<=[.!?])\s+")]
    private static partial Regex EndOfSentence();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();
}
