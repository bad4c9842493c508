namespace CareSheets.Pages;

/// <summary>For staff: on what the figures of each entry rest, and which have no evidence of their own.</summary>
/// <param name="Marks">How many figures of the whole collection carry each mark.</param>
public sealed record EvidencePage(
    string Address, PageFrame Frame, string Heading, string Lead, IReadOnlyList<Fact> Marks,
    IReadOnlyList<EvidenceGroup> Groups) : IPage
{
    public string Template => "evidence";
}

/// <summary>Entries whose figures rest on the same mark unless they say otherwise.</summary>
public sealed record EvidenceGroup(string Mark, string Count, IReadOnlyList<EvidenceLine> Entries);

/// <param name="Own">Figures with evidence of their own, or empty.</param>
/// <param name="Without">Figures that have none but the entry's mark, or empty.</param>
/// <param name="Unknown">Figures that nobody stated: estimated from relatives, or unknown.</param>
public sealed record EvidenceLine(Link Species, string VernacularName, string Own, string Without, string Unknown);
