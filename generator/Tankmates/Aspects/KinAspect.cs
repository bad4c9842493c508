namespace CareSheets.Tankmates.Aspects;

/// <summary>Species of one genus, taken for its own kind, and those of any that may cross.</summary>
public sealed class KinAspect : IAspect
{
    public string Name => "kin";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.Genus, mate.OwnKind);

    public IEnumerable<Detail> Details(Tankmate mate) =>
        [Detail.OfWord<Temper>("own_kind", "ownKind", mate.OwnKind)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        if (one.Genus == other.Genus && one.OwnKind != Temper.Peaceful)
            yield return new Reason(ReasonKind.TreatsKinAsOwn,
                one.OwnKind == Temper.Fierce ? Verdict.KeepApart : Verdict.WithCare);
        if (CrossingGenera.Cross(one.Genus, other.Genus))
            yield return new Reason(ReasonKind.MayCross, Verdict.WithCare);
    }
}
