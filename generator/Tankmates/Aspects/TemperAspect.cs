namespace CareSheets.Tankmates.Aspects;

/// <summary>How each treats other fish, and whether they meet on the same level.</summary>
public sealed class TemperAspect : IAspect
{
    public string Name => "temper";

    public bool IsMutual => false;

    public object Facet(Tankmate mate) => (mate.Others, mate.Levels);

    public IEnumerable<Detail> Details(Tankmate mate) => [Detail.OfWord<Temper>("temper", "others", mate.Others)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other) => one.Others switch
    {
        Temper.Peaceful => [],
        Temper.Feisty => [new Reason(ReasonKind.Feisty, Verdict.WithCare)],
        Temper.Territorial => Territorial(one, other),
        Temper.Fierce => [new Reason(ReasonKind.Fierce, Verdict.KeepApart)],
    };

    private static IEnumerable<Reason> Territorial(Tankmate one, Tankmate other)
    {
        if (one.Levels == Levels.None || other.Levels == Levels.None)
            return [Reason.Unknown("level", one.Levels != Levels.None, other.Levels != Levels.None)];
        if ((one.Levels & other.Levels) == Levels.None)
            return [];
        var kind = other.Others == Temper.Territorial ? ReasonKind.RivalsForPlace : ReasonKind.DefendsPlace;
        return [new Reason(kind, Verdict.WithCare)];
    }
}
