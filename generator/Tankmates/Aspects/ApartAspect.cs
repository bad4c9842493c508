namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Species, genera and families that the writer of an entry wants it kept apart from, whatever the figures say.
/// </summary>
public sealed class ApartAspect : IAspect
{
    public string Name => "apart";

    public bool IsMutual => false;

    /// <summary>Lists as text, so that equal lists are equal; no name holds the sign between them.</summary>
    public object Facet(Tankmate mate) => (string.Join('|', mate.NotWith), string.Join('|', mate.Avoided));

    public IEnumerable<Detail> Details(Tankmate mate) => [];

    public IEnumerable<Reason> Judge(Tankmate one, Tankmate other) =>
        one.NotWith.Any(other.Avoided.Contains) ? [new Reason(ReasonKind.NotWith, Verdict.KeepApart)] : [];
}
