namespace CareSheets.Quantities.Notation;

/// <summary>Which characters people type for a dash, a minus and a comparison.</summary>
internal static class Sign
{
    public const char EnDash = '–';
    public const char Minus = '−';

    /// <summary>Hyphens, figure, en and em dash, bar, minus, and the full-width hyphen.</summary>
    private const string Dashes = "-\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFF0D";

    public static bool IsDash(char c) => Dashes.Contains(c, StringComparison.Ordinal);

    /// <summary>
    /// The comparison that the text begins with, and how many characters it takes.
    /// </summary>
    public static (Bound Bound, int Length) ReadBound(ReadOnlySpan<char> text) => text switch
    {
        ['>', '=', ..] => (Bound.AtOrAbove, 2),
        ['<', '=', ..] => (Bound.AtOrBelow, 2),
        ['>', ..] => (Bound.Above, 1),
        ['<', ..] => (Bound.Below, 1),
        ['≥' or '⩾', ..] => (Bound.AtOrAbove, 1),
        ['≤' or '⩽', ..] => (Bound.AtOrBelow, 1),
        _ => (Bound.None, 0),
    };

    /// <summary>The one way we write it.</summary>
    public static string Of(Bound bound) => bound switch
    {
        Bound.None => string.Empty,
        Bound.Above => "> ",
        Bound.AtOrAbove => "≥ ",
        Bound.Below => "< ",
        Bound.AtOrBelow => "≤ ",
    };
}
