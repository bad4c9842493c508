using System.Globalization;

namespace CareSheets.Pages.Waters;

/// <summary>
/// Computed figures of water as people read them: three digits, four places at most. The scripts of the water
/// page round by the same rule.
/// </summary>
public static class Digits
{
    public static string Of(double figure) => Fixed(figure, Math.Abs(figure) switch
    {
        >= 100 => 0,
        >= 10 => 1,
        >= 1 => 2,
        >= 0.1 => 3,
        _ => 4,
    });

    /// <summary>Two neighbouring tenths of pH are more than most kits tell apart.</summary>
    public static string OfPH(double pH) => Rounded(pH, 1);

    /// <summary>Without zeros at the end of the places.</summary>
    public static string Fixed(double figure, int places)
    {
        var text = Rounded(figure, places);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>Halves up, spelt out, for the formats of C# and of browsers round some halves apart.</summary>
    private static string Rounded(double figure, int places)
    {
        var power = Math.Pow(10, places);
        var size = Math.Floor((Math.Abs(figure) * power) + 0.5) / power;
        return (figure < 0 && size > 0 ? "−" : "") + size.ToString($"F{places}", CultureInfo.InvariantCulture);
    }
}
