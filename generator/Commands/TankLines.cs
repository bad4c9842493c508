using System.Globalization;
using CareSheets.Pages;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Commands;

/// <summary>What is said of a tank beside whether it fits: its weight, and what two laws count.</summary>
internal static class TankLines
{
    private const double KilogramsPerPound = 0.45359237;

    public static IEnumerable<string> Make(Gathering gathering, TankSize tank, Words words)
    {
        var kg = FilledWeight.Estimate(tank);
        yield return words.Say(
            kg is null ? "browser.weight_water" : "browser.weight", Weight(kg ?? tank.Volume.InLitres));
        yield return words["browser.weight_caution"];
        yield return Swiss(gathering, tank, words);
        yield return words.Say("browser.austrian",
            ("least", Number(AustrianTanks.Least)), ("smallest", Sides(AustrianTanks.Standard[0])));
        if (AustrianTanks.Within(tank) is { } within)
            yield return words.Say("browser.austrian_within", ("tank", Sides(within)));
        yield return words["browser.law_caution"];
    }

    private static string Swiss(Gathering gathering, TankSize tank, Words words)
    {
        var longest = gathering.Mates.Max(SwissSpace.LengthOf);
        var (length, width, height) = SwissSpace.Sides;
        return words.Say("browser.swiss",
            ("litres", Number(gathering.Mates.Sum(SwissSpace.Litres))),
            ("sides", Sides((length * longest, width * longest, height * longest))),
            ("given", Number(tank.Volume.InLitres)));
    }

    /// <summary>Rounded up, to 5 where it is more than a person carries.</summary>
    private static (string, string)[] Weight(double kg)
    {
        static double Up(double weight) => weight < 20 ? Math.Ceiling(weight) : Math.Ceiling(weight / 5) * 5;
        return [("kg", Number(Up(kg))), ("lb", Number(Up(kg / KilogramsPerPound)))];
    }

    private static string Sides((double Length, double Width, double Height) tank) =>
        $"{Number(tank.Length)} × {Number(tank.Width)} × {Number(tank.Height)}";

    /// <summary>Up to a tenth, upward: laws ask for at least this.</summary>
    private static string Number(double figure) =>
        (Math.Ceiling((figure * 10) - 1e-6) / 10).ToString(CultureInfo.InvariantCulture);
}
