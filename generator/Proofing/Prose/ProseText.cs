using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// A text of an entry, ready to be read: marks of Markdown blanked out, so that each character
/// keeps its place, and links to other species noted.
/// </summary>
internal sealed class ProseText
{
    private const int LongestTarget = 200;

    private readonly Func<int, int, SourceSpan> _place;

    private ProseText(string text, IReadOnlyList<(int Start, int End)> linked, Func<int, int, SourceSpan> place)
    {
        (Text, Linked, _place) = (text, linked, place);
    }

    public string Text { get; }

    /// <summary>Words that are links to entries of other species.</summary>
    public IReadOnlyList<(int Start, int End)> Linked { get; }

    public SourceSpan Place(int start, int length) => _place(start, length);

    public static ProseText OfProse(Entry entry)
    {
        var (text, first) = (entry.Prose.Markdown, entry.Prose.Start);
        var lines = new List<int> { 0 };
        for (var i = text.IndexOf('\n', 0); i >= 0; i = text.IndexOf('\n', i + 1))
            lines.Add(i + 1);
        return Of(text, entry.Name, (start, length) =>
        {
            var found = lines.BinarySearch(start);
            var line = found >= 0 ? found : ~found - 1;
            var at = new SourcePosition(first.Start.Line + line, start - lines[line] + 1);
            return new SourceSpan(first.File, at, at.Right(Math.Max(1, length)));
        });
    }

    /// <summary>A field of one line is placed to the word; one folded over several lines only as a whole.</summary>
    public static ProseText OfField(Sourced<string> field, string entry) =>
        Of(field.Value, entry, (start, length) =>
            field.Span.Start.Line == field.Span.End.Line ? field.Span.Part(start, length) : field.Span);

    private static ProseText Of(string markdown, string entry, Func<int, int, SourceSpan> place)
    {
        var text = markdown.ToCharArray();
        var linked = new List<(int, int)>();
        var opened = -1;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is '*' or '_' or '`' or '#' or '>' && (i == 0 || text[i - 1] == '\n' || text[i] is '*' or '_'))
                text[i] = ' ';
            else if (text[i] == '[')
            {
                opened = i;
                text[i] = ' ';
            }
            else if (text[i] == ']')
            {
                text[i] = ' ';
                if (opened >= 0 && i + 1 < text.Length && text[i + 1] == '(')
                    i = Link(text, markdown, opened, i, entry, linked);
                opened = -1;
            }
        }
        return new ProseText(new string(text), linked, place);
    }

    /// <summary>Blanks the target out and gives the place of its closing bracket.</summary>
    private static int Link(
        char[] text, string markdown, int opened, int closed, string entry, List<(int, int)> linked)
    {
        var end = markdown.IndexOf(')', closed, Math.Min(LongestTarget, markdown.Length - closed));
        if (end < 0)
            return closed;
        var target = markdown[(closed + 2)..end];
        Array.Fill(text, ' ', closed, end - closed + 1);
        if (!target.Contains(':', StringComparison.Ordinal) && target.Split('.')[0] != entry)
            linked.Add((opened + 1, closed));
        return end;
    }
}
