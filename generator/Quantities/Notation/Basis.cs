namespace CareSheets.Quantities.Notation;

/// <summary>The marks by which writers state how a fish was measured.</summary>
internal static class Basis
{
    public const string Marks = "TL, SL, DW";

    public static string Mark(LengthBasis basis) => basis switch
    {
        LengthBasis.Total => "TL",
        LengthBasis.Standard => "SL",
        LengthBasis.DiscWidth => "DW",
    };

    /// <summary>Parts "in SL" into a unit and a basis; either may be missing.</summary>
    public static (TextPart? Unit, TextPart? Mark) Split(TextPart? words)
    {
        if (words is null || !IsMark(words.Text[^Math.Min(2, words.Text.Length)..]))
        {
            return (words, null);
        }

        var before = words.Text[..^2];
        var unit = before.TrimEnd();
        var mark = new TextPart(words.End - 2, words.Text[^2..]);
        return unit.Length == 0 ? (null, mark)
            : unit.Length < before.Length ? (new TextPart(words.Index, unit), mark)
            : (words, null);
    }

    public static LengthBasis? Of(TextPart? mark) => mark?.Text.ToUpperInvariant() switch
    {
        "TL" => LengthBasis.Total,
        "SL" => LengthBasis.Standard,
        "DW" => LengthBasis.DiscWidth,
        _ => null,
    };

    private static bool IsMark(string text) => Of(new TextPart(0, text)) is not null;
}
