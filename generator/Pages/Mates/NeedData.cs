using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Aspects;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>What each species asks of a tank and its water, as limits and words for the scripts.</summary>
internal sealed class NeedData(Site site, Acquaintances mates)
{
    private readonly MateSentences _sentences = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);

    private readonly LimitManners _manners = new();

    public object Make() => new
    {
        tank = Measures(MateLimits.OfTank),
        salt = Measures(MateLimits.OfSalt),
        water = Measures(m => MateLimits.OfWater(m, mates.Ranges.Where(WaterAspect.IsNeeded))),
        manners = _manners.All,
        plausible = mates.Ranges.ToDictionary(r => r.Field, r => new[] { r.Plausible.Low, r.Plausible.High }),
        units = DimensionCatalogue.All.ToDictionary(d => d.Key, Units),
        sides = Ends(TankText.PossibleSide),
        volumes = Ends(TankText.PossibleVolume),
        group = mates.Mates.Select(m => m.Group),
        company = mates.Mates.Select(m => m.GroupKind.ToString()),
        volume = mates.Mates.Select(m => m.Housing.Volume),
        own = mates.Mates.Select(m => m.Neighbours == Neighbours.None),
        share = RoomForAll.LeastShare,
        folds = new NeedFolds(site.Words).Make(mates.Mates)
            .Select(f => new { label = f.Label, of = f.Of, words = f.Words, table = f.Table }),
        needs = Needs(),
        weight = FilledWeight.Steps.Select(s => new[] { s.UpTo, WeightStep.Box, s.Walls, s.Corners, s.Floor }),
        swiss = new
        {
            litres = mates.Mates.Select(SwissSpace.Litres),
            lengths = mates.Mates.Select(SwissSpace.LengthOf),
            sides = new[] { SwissSpace.Sides.Length, SwissSpace.Sides.Width, SwissSpace.Sides.Height },
        },
        austrian = new
        {
            least = AustrianTanks.Least,
            tanks = AustrianTanks.Standard.Select(s => new[] { s.Length, s.Width, s.Height }),
        },
        tap = Tap(),
    };

    private IReadOnlyList<object> Measures(Func<Tankmate, IReadOnlyList<Limits>> limitsOf)
    {
        var all = mates.Mates.Select(limitsOf).ToList();
        return all.Count == 0 ? [] : [.. all[0].Select((first, i) => Measure(first, [.. all.Select(a => a[i])]))];
    }

    private object Measure(Limits first, IReadOnlyList<Limits> limits) => new
    {
        key = first.Field,
        dimension = first.Dimension.Key,
        label = _sentences.FieldName(first.Field),
        limits = limits.Select(l => l is { Fits: { } fits, Nearly: { } nearly }
            ? new[] { Finite(nearly.Low), Finite(fits.Low), Finite(fits.High), Finite(nearly.High) }
            : null),
        needs = limits.Select(l => FitSentences.Need(l, _figures)),
        manner = limits.Select(_manners.Of).ToList(),
    };

    private static double? Finite(double end) => double.IsFinite(end) ? end : null;

    private static double[] Ends(Stretch range) => [range.Low, range.High];

    /// <summary>Metric first; canonical = (figure − zero) × times ÷ over.</summary>
    private static IReadOnlyList<object> Units(Dimension dimension) =>
    [
        .. new[] { UnitSystem.Metric, UnitSystem.US }.Select(dimension.For).Distinct()
            .Select(u => (object)new { key = u.Key, symbol = u.Symbol, zero = u.Zero, times = u.Times, over = u.Over }),
    ];

    private object Needs()
    {
        var words = mates.Mates.SelectMany(m => m.Housing.Needs).Distinct().Order(StringComparer.Ordinal).ToList();
        return new
        {
            words = words.Select(w => site.Words[$"needs.{w}"]),
            of = mates.Mates.Select(m => m.Housing.Needs.Select(n => words.IndexOf(n)).Order()),
        };
    }

    /// <summary>
    /// The tap's temperature is left out, for a heater decides that; so is a figure that varies.
    /// </summary>
    private Dictionary<string, double> Tap() => site.Collection.Store.Tap is not { } tap ? [] : tap.Figures
        .Where(f => f.Value.IsSingle && f.Value.Dimension != DimensionCatalogue.Temperature &&
            mates.Ranges.Any(r => r.Field == f.Key && r.IsAlwaysShown))
        .ToDictionary(f => f.Key, f => f.Value.Low!.Value);
}
