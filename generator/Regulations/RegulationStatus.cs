namespace CareSheets.Regulations;

/// <summary>
/// What the lists say of one taxon, worst first. Silence of every list is "not found in the lists
/// checked" and nothing more; the authority always has the last word.
/// </summary>
/// <param name="Here">Lists that bind the shop, each with its outcome.</param>
/// <param name="Elsewhere">Lists of other places, only where they name the taxon.</param>
public sealed record RegulationStatus(IReadOnlyList<ListOutcome> Here, IReadOnlyList<ListOutcome> Elsewhere)
{
    /// <summary>The strictest line that binds the shop, if any list names the taxon.</summary>
    public ListOutcome? Strictest => Here.FirstOrDefault(o => o.Kind == OutcomeKind.Listed);

    public IEnumerable<ListOutcome> Of(OutcomeKind kind) => Here.Where(o => o.Kind == kind);
}
