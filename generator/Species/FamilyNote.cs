using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>What is written down of families.</summary>
/// <param name="Notes">Those that could be read.</param>
/// <param name="Named">Latin names of all that have a line, also of those with a mistake in it.</param>
public sealed record FamilyNotes(IReadOnlyList<FamilyNote> Notes, IReadOnlySet<string> Named);

/// <summary>What customers call a family, and what its fishes share.</summary>
/// <param name="Name">The Latin name, which ends in -idae.</param>
/// <param name="VernacularNames">In the plural, the preferred one first; at least one.</param>
/// <param name="Text">True of every species of the family in this collection.</param>
public sealed record FamilyNote(
    Sourced<string> Name, IReadOnlyList<Sourced<string>> VernacularNames, string Text, Evidence Evidence)
{
    public string VernacularName => VernacularNames[0].Value;
}
