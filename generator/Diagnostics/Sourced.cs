namespace CareSheets.Diagnostics;

/// <summary>A value with the place in a file that it was read from.</summary>
public sealed record Sourced<T>(T Value, SourceSpan Span)
{
    public Sourced<TOther> With<TOther>(TOther other) => new(other, Span);
}
