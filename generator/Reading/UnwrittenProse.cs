using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// Whether a person has written anything under the front matter: neither what a draft begins with nor a heading, a
/// hidden remark or a promise alone is what customers come for.
/// </summary>
internal static partial class UnwrittenProse
{
    /// <summary>Words that stand where something is still to be written.</summary>
    private static readonly HashSet<string> Promises =
        ["todo", "tbd", "tba", "fixme", "xxx", "lorem ipsum", "to be written", "to follow", "nothing", "coming soon"];

    /// <summary>Made once: an automaton costs more to make than all entries cost to read.</summary>
    private static readonly (string Sentence, Regex Loosely)[] OfDraft =
        [.. Prose.OfDraft.Select(sentence => (sentence, Loosely(sentence)))];

    public static void Check(SourceFile file, FrontMatter text, DiagnosticBag bag)
    {
        foreach (var (sentence, loosely) in OfDraft)
        {
            if (loosely.Match(text.Prose) is { Success: true } left)
            {
                bag.Add(ReadingCodes.DraftProse, Place(file, text, left.Index, left.Length), ("text", sentence));
                return;
            }
        }
        var said = Hidden().Replace(text.Prose, " ").Trim(' ', '\n', '.', '…', '-', '*', '_', '?', '!');
        if (text.Prose.Trim().Length > 0 && (!said.Any(char.IsLetter) || Promises.Contains(said.ToLowerInvariant())))
            bag.Add(ReadingCodes.NoProse, file.Span(text.ProseLine - 1, 1, FrontMatter.Fence.Length));
    }

    /// <summary>However its words are parted, for an editor may have folded it.</summary>
    private static Regex Loosely(string sentence) => new(
        string.Join(@"\s+", sentence.Split(' ').Select(Regex.Escape)),
        RegexOptions.IgnoreCase | RegexOptions.NonBacktracking);

    private static SourceSpan Place(SourceFile file, FrontMatter text, int at, int length)
    {
        var line = text.Prose.AsSpan(0, at).Count('\n');
        var end = text.Prose.IndexOf('\n', at);
        return file.Span(text.ProseLine + line, at - text.Prose.LastIndexOf('\n', at),
            end < 0 ? length : Math.Min(length, end - at));
    }

    /// <summary>Headings, and remarks that no page shows.</summary>
    [GeneratedRegex(@"(^|\n)[ ]{0,3}#{1,6}[ ][^\n]*|<!--[^>]*-->", RegexOptions.NonBacktracking)]
    private static partial Regex Hidden();
}
