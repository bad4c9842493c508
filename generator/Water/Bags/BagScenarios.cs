using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>Every combination of what was measured and what is assumed, computed one by one.</summary>
internal sealed class BagScenarios(BagReading bag, ReceivingWater tank)
{
    /// <summary>Volumes of tank water for each volume of bag water.</summary>
    internal static readonly double[] Volumes = [0.25, 0.5, 1, 2, 4];

    private readonly IReadOnlyList<CarbonateHardness> _alkalinities = Assumed.Try(bag.Alkalinity, Assumed.Alkalinity);
    private readonly IReadOnlyList<Acidity> _acidities = Assumed.Try(bag.PH, Assumed.BagPH);
    private readonly IReadOnlyList<CarbonateHardness> _tanks = Assumed.Try(tank.Alkalinity, Assumed.Alkalinity);

    /// <summary>The warmer of the two: there more of the ammonia is un-ionised.</summary>
    public Temperature Warmer { get; } =
        tank.Temperature is { } other && other > bag.Temperature ? other : bag.Temperature;

    public SumResult<Range<Acidity>> AiredPH() =>
        Hull(_alkalinities.Select(a => CarbonateWater.Aired(a, Warmer).Then<Acidity>(w => w.PH)));

    /// <summary>Un-ionised ammonia at every pH of a range.</summary>
    public static SumResult<Range<Ammonia>> Unionised(Ammonia total, Range<Acidity> acidity, Temperature temperature) =>
        Hull(new[] { acidity.Min!.Value, acidity.Max!.Value }
            .Select(pH => UnionisedAmmonia.In(total, pH, temperature)));

    public SumResult<Range<Ammonia>> Now(Ammonia total) =>
        Hull(_acidities.Select(pH => UnionisedAmmonia.In(total, pH, bag.Temperature)));

    /// <summary>Nothing where the pH of the tank is not known.</summary>
    public SumResult<List<MixStep>> Steps()
    {
        var steps = new List<MixStep>();
        foreach (var volumes in tank.PH is null ? [] : Volumes)
        {
            var step = Step(volumes);
            if (!step.Ok)
                return step.Refusal!;
            steps.Add(step.Value);
        }
        return steps;
    }

    private SumResult<MixStep> Step(double volumes)
    {
        var acidities = Hull(
            from bagAlkalinity in _alkalinities
            from bagPH in _acidities
            from tankAlkalinity in _tanks
            from mixed in Mixed(bagAlkalinity, bagPH, tankAlkalinity, volumes)
            select mixed);
        return acidities.Then<MixStep>(pH => bag.Ammonia is not { } total
            ? new MixStep(volumes, pH, null)
            : Unionised(total * Dilution.LeftAfterPouring(volumes), pH, Warmer)
                .Then<MixStep>(unionised => new MixStep(volumes, pH, unionised)));
    }

    /// <summary>The pH of one combination, closed and aired.</summary>
    private IEnumerable<SumResult<Acidity>> Mixed(
        CarbonateHardness bagAlkalinity, Acidity bagPH, CarbonateHardness tankAlkalinity, double volumes)
    {
        var one = CarbonateWater.Of(bagAlkalinity, bagPH, bag.Temperature);
        var other = CarbonateWater.Of(tankAlkalinity, tank.PH!.Value, tank.Temperature ?? bag.Temperature);
        var mixed = one.Then(o => other.Then(t => CarbonateWater.Mix(o, 1, t, volumes)));
        yield return mixed.Then<Acidity>(m => m.PH);
        yield return mixed.Then(m => CarbonateWater.Aired(m.Alkalinity, Warmer)).Then<Acidity>(m => m.PH);
    }

    private static SumResult<Range<T>> Hull<T>(IEnumerable<SumResult<T>> all)
        where T : struct, IQuantity<T>
    {
        Range<T>? hull = null;
        foreach (var one in all)
        {
            if (!one.Ok)
                return one.Refusal!;
            var exactly = Range<T>.Exactly(one.Value);
            hull = hull?.Hull(exactly) ?? exactly;
        }
        return hull!.Value;
    }
}
