namespace CareSheets.Species;

/// <summary>
/// Names that the content's files give, whether or not what stands behind them could be read. One
/// mistake is then told once, and not again by everything that leads to it.
/// </summary>
/// <param name="Entries">File names of entries, without their ending.</param>
/// <param name="Unread">Those of them that could not be bound; what else they are called is not known.</param>
/// <param name="Drafts">Those of them that are not finished and have no page.</param>
/// <param name="References">Keys of references.yaml; nothing when the file can't be read.</param>
/// <param name="Terms">Keys of glossary.yaml; nothing when the file can't be read.</param>
public sealed record KnownNames(
    IReadOnlySet<string> Entries,
    IReadOnlySet<string> Unread,
    IReadOnlySet<string> Drafts,
    IReadOnlySet<string>? References,
    IReadOnlySet<string>? Terms);
