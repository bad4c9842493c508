namespace CareSheets.Quantities.Notation;

/// <summary>The one way a range is written out, whoever wrote it first.</summary>
internal static class RangeText
{
    /// <summary>Figures joined by an en dash without spaces, then unit and basis.</summary>
    public static string Write(Bound bound, string figures, Unit unit, LengthBasis? basis)
    {
        var mark = basis is { } known ? " " + Basis.Mark(known) : string.Empty;
        var symbol = unit.Symbol.Length == 0 ? string.Empty : " " + unit.Symbol;
        return Sign.Of(bound) + figures + symbol + mark;
    }

    /// <summary>A range of no width is one figure.</summary>
    public static string Figures(string? low, string? high) =>
        low is null || high is null || low == high ? low ?? high ?? string.Empty
        : low + Sign.EnDash + high;
}
