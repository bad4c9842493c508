using CareSheets.Quantities;

namespace CareSheets.Tankmates.Aspects;

/// <summary>Whether one eats the other, or is so much larger that the other gets hurt.</summary>
public sealed class SwallowingAspect : IAspect
{
    public string Name => "swallowing";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => mate.Body;

    /// <summary>
    /// What passes and what can be passed are both rounded up, so that the smaller of the two never looks the
    /// larger; where prey is beyond, reach and gape are rounded down, so that it always looks beyond.
    /// </summary>
    public IEnumerable<Detail> Details(Tankmate mate)
    {
        var body = mate.Body;
        static Detail About(string blank, double cm, Rounding rounding = Rounding.Upward) =>
            Detail.Figure(blank, DimensionCatalogue.Length, Stretch.Exactly(cm), rounding);
        return
        [
            Detail.Figure("length", DimensionCatalogue.Length, body.Length, Rounding.Upward),
            Detail.OfWord("basis", $"mate_basis.{body.Basis}"),
            About("total", Predation.SmallestTotal(body)),
            About("reach", Predation.Reach(body)),
            About("gape", Predation.Gape(body)),
            About("depth", Predation.Depth(body)),
            About("short_reach", Predation.Reach(body), Rounding.Downward),
            About("small_gape", Predation.Gape(body), Rounding.Downward),
        ];
    }

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        var verdict = Predation.Judge(one.Body, other.Body);
        if (verdict != Verdict.Suits)
            return [new Reason(KindOf(one.Body, other.Body, verdict), verdict)];
        return Predation.LargestTotal(one.Body) > Predation.MuchLarger * Predation.SmallestTotal(other.Body)
            ? [new Reason(ReasonKind.MuchLarger, Verdict.WithCare)]
            : [];
    }

    private static ReasonKind KindOf(Body predator, Body prey, Verdict verdict) =>
        (verdict == Verdict.KeepApart, Predation.Fits(predator, prey, 1)) switch
        {
            (true, true) => ReasonKind.WouldSwallow,
            (true, false) => ReasonKind.WouldHunt,
            (false, true) => ReasonKind.MightTake,
            (false, false) => Beyond(predator, prey),
        };

    private static ReasonKind Beyond(Body predator, Body prey) =>
        (Predation.Depth(prey) > Predation.Gape(predator),
            Predation.SmallestTotal(prey) > Predation.Reach(predator)) switch
        {
            (true, false) => ReasonKind.MightSwallowDeeper,
            (false, true) => ReasonKind.MightSwallowLonger,
            _ => ReasonKind.MightSwallow,
        };
}
