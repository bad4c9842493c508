namespace CareSheets.Tankmates.Aspects;

/// <summary>How bright each likes it; dim and bright need corners of their own.</summary>
public sealed class LightAspect : IAspect
{
    public string Name => "light";

    public bool IsMutual => true;

    public object Facet(Tankmate mate) => mate.Light ?? (object)"unknown";

    public IEnumerable<Detail> Details(Tankmate mate) => [Detail.OfWord("light", "light", mate.Light)];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other)
    {
        if (one.Light is not { } here || other.Light is not { } there)
            return CanMatter(one.Light ?? other.Light)
                ? [Reason.Unknown("light", one.Light is not null, other.Light is not null)]
                : [];
        return Math.Abs(here - there) > 1 ? [new Reason(ReasonKind.LightDiffers, Verdict.WithCare)] : [];
    }

    /// <summary>Beside one that likes medium light no light of the other would be a matter.</summary>
    private static bool CanMatter(Light? known) => known != Light.Medium;
}
