using System.Globalization;
using CareSheets.Pages;
using CareSheets.Pages.Mates;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Commands;

/// <summary>
/// What is said of a tank beside whether it fits: its weight, and what two laws count. Nothing is counted for a group
/// that has to be kept apart.
/// </summary>
internal static class TankLines
{
    private const double KilogramsPerPound = 0.45359237;

    public static IEnumerable<string> Make(Gathering gathering, TankSize tank, Words words)
    {
        var filled = FilledWeight.Estimate(tank);
        if ((filled ?? tank.Volume?.InLitres) is { } kg)
        {
            yield return words.Say(filled is null ? "browser.weight_water" : "browser.weight", Weight(kg));
            yield return words["browser.weight_caution"];
        }
        if (gathering.Verdict == Verdict.KeepApart)
            yield break;
        yield return Swiss(gathering, tank, words);
        yield return words.Say("browser.austrian",
            ("least", TankSentences.AtLeast(AustrianTanks.Least)), ("smallest", Sides(AustrianTanks.Standard[0])));
        if (AustrianTanks.Within(tank) is { } within)
            yield return words.Say("browser.austrian_within", ("tank", Sides(within)));
        yield return words["browser.law_caution"];
    }

    private static string Swiss(Gathering gathering, TankSize tank, Words words)
    {
        var longest = gathering.Mates.Max(SwissSpace.LengthOf);
        var (length, width, height) = SwissSpace.Sides;
        var asked = words.Say("browser.swiss",
            ("litres", TankSentences.AtLeast(gathering.Mates.Sum(SwissSpace.Litres))),
            ("sides", Sides((length * longest, width * longest, height * longest))));
        return tank.Volume is not { } volume ? asked
            : $"{asked} {words.Say("browser.swiss_given", ("given", Down(volume.InLitres)))}";
    }

    /// <summary>Rounded up, to 5 where it is more than a person carries.</summary>
    private static (string, string)[] Weight(double kg)
    {
        static double Up(double weight) => weight < 20 ? Math.Ceiling(weight) : Math.Ceiling(weight / 5) * 5;
        return [("kg", TankSentences.AtLeast(Up(kg))), ("lb", TankSentences.AtLeast(Up(kg / KilogramsPerPound)))];
    }

    private static string Sides((double Length, double Width, double Height) tank) =>
        string.Join(" × ", new[] { tank.Length, tank.Width, tank.Height }.Select(TankSentences.AtLeast));

    /// <summary>Down to a tenth: a tank is never said to hold more than it does.</summary>
    private static string Down(double litres) =>
        (Math.Floor((litres * 10) + 1e-6) / 10).ToString(CultureInfo.InvariantCulture);
}
