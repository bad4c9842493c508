using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>Whether a tank fits a group, as sentences of the theme; the page's script says the same.</summary>
public sealed class TankSentences(Site site)
{
    private readonly StretchText _figures = new(site.Words, site.Units);

    private Words Words => site.Words;

    /// <summary>Of a group with a tank.</summary>
    public string Verdict(Gathering gathering) => Words[(gathering.Verdict, gathering.Fit, gathering.FitOfEach) switch
    {
        (Tankmates.Verdict.KeepApart, _, _) => "browser.tank_apart",
        (_, Fit.NotKnown, Fit.Fits) => "browser.tank_alone",
        (_, Fit.Fits, _) => "browser.tank_fits",
        (_, Fit.Nearly, _) => "browser.tank_nearly",
        (_, Fit.NotKnown, _) => "browser.tank_not_known",
        _ => "browser.tank_not",
    }];

    /// <summary>What would have to be said of the tank before any species can fit.</summary>
    public IEnumerable<string> Missing(TankSize tank)
    {
        if (tank.Length is null)
            yield return Words["browser.give_length"];
        if (tank.Volume is null)
            yield return Words["browser.give_volume"];
    }

    /// <summary>What stands against all together, though nothing may stand against each alone.</summary>
    public IEnumerable<string> Room(Gathering gathering)
    {
        if (gathering.Verdict == Tankmates.Verdict.KeepApart || gathering.Room is not { } room ||
            room.State == RoomState.Enough)
            yield break;
        yield return Blanks.Fill(Words[$"browser.{KeyOf(room.State)}"],
        [
            ("all", Litres(room.Asked)), ("given", Litres(room.Given)),
            ("litres", AtLeast(room.SwissLeast)), ("percent", Percent),
        ]);
    }

    internal static string Percent => (RoomForAll.LeastShare * 100).ToString(CultureInfo.InvariantCulture);

    internal static string KeyOf(RoomState state) => state switch
    {
        RoomState.BelowSwissLeast => "tank_below_law",
        RoomState.BelowShare => "tank_below_share",
        RoomState.BelowSum => "tank_below_sum",
        RoomState.Enough => "tank_fits",
    };

    /// <summary>Up to a tenth, upward: laws ask for at least this.</summary>
    public static string AtLeast(double figure) =>
        (Math.Ceiling((figure * 10) - 1e-6) / 10).ToString(CultureInfo.InvariantCulture);

    private string Litres(double litres) =>
        _figures.Show(DimensionCatalogue.Volume, Stretch.Exactly(litres), Rounding.Nearest);
}
