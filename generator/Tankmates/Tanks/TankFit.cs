using CareSheets.Species;

namespace CareSheets.Tankmates.Tanks;

/// <summary>Whether a species fits a tank and a water, with every reason why not.</summary>
public static class TankFit
{
    /// <summary>Nobody says of what water a tank is filled with, so a fish that needs salt asks for it.</summary>
    public static IReadOnlyList<FitReason> InTank(Tankmate mate, TankSize tank)
    {
        double? Figure(string field) => field switch
        {
            "length" => tank.Length?.Canonical,
            "width" => tank.Width?.Canonical,
            "height" => tank.Height?.Canonical,
            _ => tank.Volume?.Canonical,
        };
        return [.. Reasons(MateLimits.OfTank(mate), Figure), .. Reasons(MateLimits.OfSalt(mate), _ => null)];
    }

    /// <summary>Judges by the figures given; what the customer left out is not asked.</summary>
    /// <param name="mate">Who is to live in it.</param>
    /// <param name="ranges">The care ranges of the schema.</param>
    /// <param name="water">Figures in canonical units, by care range.</param>
    public static IReadOnlyList<FitReason> InWater(
        Tankmate mate, IEnumerable<CareRangeDeclaration> ranges, IReadOnlyDictionary<string, double> water) =>
        Reasons(MateLimits.OfWater(mate, ranges.Where(r => water.ContainsKey(r.Field))), field => water[field]);

    public static Fit Worst(IEnumerable<FitReason> reasons) =>
        reasons.Aggregate(Fit.Fits, (worst, r) => r.Weight > worst ? r.Weight : worst);

    private static IReadOnlyList<FitReason> Reasons(IReadOnlyList<Limits> limits, Func<string, double?> figure) =>
    [
        .. from limit in limits
           let given = figure(limit.Field)
           let fit = limit.Judge(given)
           where fit != Fit.Fits
           select new FitReason(fit, limit, given),
    ];
}
