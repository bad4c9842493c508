using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rendering;

/// <summary>Places in an entry's prose as places in its file. Markdig counts lines and columns from 0.</summary>
internal sealed class EntryProse(Entry entry)
{
    public Entry Entry => entry;

    public SourceSpan Span(int line, int column, int length)
    {
        var start = new SourcePosition(entry.Prose.Start.Start.Line + line, column + 1);
        return new SourceSpan(entry.Prose.Start.File, start, start.Right(Math.Max(1, length)));
    }
}
