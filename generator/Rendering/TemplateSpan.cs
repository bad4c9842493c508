using CareSheets.Diagnostics;

namespace CareSheets.Rendering;

/// <summary>Scriban counts lines and columns from 0; we count from 1.</summary>
internal static class TemplateSpan
{
    public static SourceSpan Of(Scriban.Parsing.SourceSpan span)
    {
        if (string.IsNullOrEmpty(span.FileName))
            return SourceSpan.None;
        var start = new SourcePosition(span.Start.Line + 1, span.Start.Column + 1);
        var end = new SourcePosition(span.End.Line + 1, span.End.Column + 2);
        return new SourceSpan(span.FileName, start, end > start ? end : start.Right(1));
    }
}
