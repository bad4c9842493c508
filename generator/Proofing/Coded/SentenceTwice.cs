using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No sentence of prose or caution stands word for word in two entries whose figures differ: what was
/// copied was seldom thought about.
/// </summary>
internal sealed partial class SentenceTwice : ICodedRule
{
    public static readonly CodedText Text = new(
        "sentence-is-told-once", Severity.Warning,
        "Another entry has the very same sentence", "Say what is true of this species, in words of its own.",
        "Sentences copied from entry to entry go on saying what is true of the first one", "common practice, no source");

    /// <summary>Shorter ones, such as "It jumps.", people will write twice.</summary>
    private const int FewestWords = 6;

    private readonly Dictionary<string, List<(Entry Entry, SourceSpan Span)>> _places = [];

    public SentenceTwice(IReadOnlyList<Entry> entries)
    {
        foreach (var entry in entries)
        {
            foreach (var (key, span) in Sentences(entry))
            {
                if (!_places.TryGetValue(key, out var places))
                    _places[key] = places = [];
                places.Add((entry, span));
            }
        }
    }

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from sentence in Sentences(entry)
        let other = _places.GetValueOrDefault(sentence.Key, []).FirstOrDefault(p => p.Entry.Name != entry.Name)
        where other.Entry is not null
        select Text.Breach(entry, sentence.Span, "", $"“{Shorten(sentence.Key)}”",
            new RelatedSpan(other.Span, $"the same in {other.Entry.Name}"));

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

    private static bool IsLong(string sentence) =>
        sentence.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length >= FewestWords;

    private static string Plain(string sentence) => string.Join(' ', Link().Replace(sentence, "$1").ToLowerInvariant()
        .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.', '!', '?');

    private static SourceSpan LineOf(Prose prose, int line)
    {
        var start = prose.Start.Start with { Line = prose.Start.Start.Line + line, Column = 1 };
        return prose.Start with { Start = start, End = start.Right(1) };
    }

    private static string Shorten(string text) => text.Length <= 60 ? text : text[..57] + "...";

    [GeneratedRegex(@"(?<=[.!?])\s+")]
    private static partial Regex EndOfSentence();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();
}
