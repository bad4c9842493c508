namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Whether one nips the other's fins. Entries don't tell long fins from short ones, so a nipper is
/// never harmless; a fish whose height is stated has fins or a build that invite it most.
/// </summary>
public sealed class FinAspect : IAspect
{
    public string Name => "fins";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.NipsFins, mate.IsTall);

    public IEnumerable<Detail> Details(Tankmate mate) => [];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        if (!one.NipsFins)
            return [];
        return other.IsTall
            ? [new Reason(ReasonKind.NipsTallFins, Verdict.KeepApart)]
            : [new Reason(ReasonKind.NipsFins, Verdict.WithCare)];
    }
}
