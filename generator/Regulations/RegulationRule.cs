using CareSheets.Diagnostics;

namespace CareSheets.Regulations;

/// <summary>One line of a list of law: the taxon that it names, and what it does to it.</summary>
/// <param name="Also">Other names of the same taxon, those that are out of use as well.</param>
/// <param name="Genera">
/// Genera of a family or an order, for a name whose family is not known; never taken for complete.
/// </param>
/// <param name="Except">Species or genera that the line leaves out.</param>
/// <param name="HasUnknownExceptions">There are exceptions that nobody has written down here.</param>
/// <param name="Clause">Where in the law it stands: an article, an annex, an appendix.</param>
/// <param name="Note">Life stages, hybrids, wild stock: what narrows or widens the line.</param>
public sealed record RegulationRule(
    RuleRank Rank,
    Sourced<string> Name,
    IReadOnlyList<string> Also,
    IReadOnlyList<string> Genera,
    IReadOnlyList<string> Except,
    bool HasUnknownExceptions,
    RegulationEffect Effect,
    string Clause,
    string? Note);
