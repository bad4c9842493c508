using CareSheets.Quantities;

namespace CareSheets.Tankmates.Aspects;

/// <summary>Whether one eats the other, or is so much larger that the other gets hurt.</summary>
public sealed class SwallowingAspect : IAspect
{
    public string Name => "swallowing";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => mate.Body;

    public IEnumerable<Detail> Details(Tankmate mate)
    {
        var body = mate.Body;
        static Detail About(string blank, double cm) =>
            Detail.Figure(blank, DimensionCatalogue.Length, Stretch.Exactly(cm), Rounding.Nearest);
        return
        [
            Detail.Figure("length", DimensionCatalogue.Length, body.Length, Rounding.Upward),
            Detail.OfWord("basis", $"mate_basis.{body.Basis}"),
            About("reach", Predation.Reach(body)),
            About("gape", Predation.Gape(body)),
            About("depth", Predation.Depth(body)),
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
            (false, false) => ReasonKind.MightSwallow,
        };
}
