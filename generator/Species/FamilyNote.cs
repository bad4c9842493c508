using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>What customers call a family, and what its fishes share.</summary>
/// <param name="Name">The Latin name, which ends in -idae.</param>
/// <param name="VernacularNames">In the plural, the preferred one first; at least one.</param>
/// <param name="Text">True of every species of the family in this collection.</param>
public sealed record FamilyNote(
    Sourced<string> Name, IReadOnlyList<Sourced<string>> VernacularNames, string Text, Evidence Evidence)
{
    public string VernacularName => VernacularNames[0].Value;
}
