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
        Detail Of(string blank, double low, double high) =>
            Detail.Figure(blank, DimensionCatalogue.Length, Stretch.Between(low, high));
        return
        [
            Of("length", body.Length.Low, body.Length.High),
            Detail.OfWord("basis", $"mate_basis.{body.Basis}"),
            Of("reach", Predation.Reach(body), Predation.Reach(body)),
            Of("gape", Predation.Gape(body), Predation.Gape(body)),
            Of("depth", Predation.Depth(body), Predation.Depth(body)),
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
