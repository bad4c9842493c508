namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// What each needs to lie on the bottom. Neighbouring grains make do with the finer one; stones go
/// with anything, for they are laid on top; bare glass goes with nothing else.
/// </summary>
public sealed class BottomAspect : IAspect
{
    public string Name => "bottom";

    public bool IsMutual => true;

    /// <summary>The one that serves both, or nothing.</summary>
    public static Substrate? Common(Substrate one, Substrate other)
    {
        var (finer, coarser) = one <= other ? (one, other) : (other, one);
        if (finer == coarser || finer == Substrate.Any)
            return coarser;
        if (finer == Substrate.Bare)
            return null;
        return coarser == Substrate.Stones || coarser - finer == 1 ? finer : null;
    }

    public object Facet(Tankmate mate) => mate.Housing.Substrate;

    public IEnumerable<Detail> Details(Tankmate mate) =>
        [Detail.OfWord<Substrate>("bottom", "substrate", mate.Housing.Substrate)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other) =>
        Common(one.Housing.Substrate, other.Housing.Substrate) is null
            ? [new Reason(ReasonKind.BottomDiffers, Verdict.WithCare)]
            : [];
}
