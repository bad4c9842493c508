namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// How fast each wants its water. A neighbouring speed is no matter, two steps ask for calm
/// corners, three can't be had in one tank (common practice, no source).
/// </summary>
public sealed class FlowAspect : IAspect
{
    public string Name => "flow";

    public bool IsMutual => true;

    public object Facet(Tankmate mate) => mate.Flow ?? (object)"unknown";

    public IEnumerable<Detail> Details(Tankmate mate) => [Detail.OfWord("flow", "flow", mate.Flow)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        if (one.Flow is not { } here || other.Flow is not { } there)
            return [Reason.Unknown("flow", one.Flow is not null, other.Flow is not null)];
        return Math.Abs(here - there) switch
        {
            0 or 1 => [],
            2 => [new Reason(ReasonKind.FlowDiffers, Verdict.WithCare)],
            _ => [new Reason(ReasonKind.FlowApart, Verdict.KeepApart)],
        };
    }
}
