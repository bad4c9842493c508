using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>In which respect a species asks for more than most.</summary>
public enum DemandKind
{
    Size,
    Time,
    Water,
    Company,
    Food,
    Equipment,
    Evidence,
}

/// <summary>
/// One reason why a species asks for more than most, instead of a word such as easy or hard. Each stands
/// on figures or words of the entry, which its sentence shows.
/// </summary>
/// <param name="Says">A sentence with the paths of fields in braces, where their figures are shown.</param>
/// <param name="Brief">The same in a few words.</param>
public sealed record Demand(
    Sourced<string> Name, DemandKind Kind, string Says, string Brief, Evidence Evidence, AllOf When);
