using System.Text;

namespace CareSheets.Quantities.Notation;

/// <summary>
/// Commas inside figures, which some read as a decimal sign and some as thousands.
/// </summary>
internal static class DecimalComma
{
    /// <summary>
    /// Rewrites each comma between digits: dropped where one to three digits, not a lone zero,
    /// stand before it and exactly three after it (1,000), else a decimal point (22,5).
    /// </summary>
    public static string Correct(string text)
    {
        var corrected = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var isInside = text[i] == ',' && IsDigit(text, i - 1) && IsDigit(text, i + 1);
            corrected.Append(!isInside ? text[i] : IsThousands(text, i) ? string.Empty : ".");
        }

        return corrected.ToString();
    }

    private static bool IsThousands(string text, int comma) =>
        IsDigit(text, comma + 2) && IsDigit(text, comma + 3) && !IsDigit(text, comma + 4)
        && !IsDigit(text, comma - 4)
        && (text[comma - 1] != '0' || IsDigit(text, comma - 2));

    private static bool IsDigit(string text, int i) =>
        i >= 0 && i < text.Length && char.IsAsciiDigit(text[i]);
}
