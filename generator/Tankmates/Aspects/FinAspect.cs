namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Whether one nips the other's fins. A nipper is never harmless; trailing fins and feelers and a tall build invite
/// it most.
/// </summary>
public sealed class FinAspect : IAspect
{
    public string Name => "fins";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.NipsFins, mate.IsTall, mate.Fins);

    public IEnumerable<Detail> Details(Tankmate mate) => [];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        if (!one.NipsFins)
            return [];
        if (other.IsTall || other.Fins == Fins.Trailing)
            return [new Reason(ReasonKind.NipsTrailingFins, Verdict.KeepApart)];
        return [new Reason(other.Fins is null ? ReasonKind.MayNipFins : ReasonKind.NipsFins, Verdict.WithCare)];
    }
}
