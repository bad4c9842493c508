using CareSheets.Collection;

namespace CareSheets.Renaming;

/// <summary>A genus all of whose entries move, and where they go.</summary>
internal sealed record EmptiedGenus(string Name, IReadOnlyList<string> Now)
{
    public static IReadOnlyList<EmptiedGenus> Of(IReadOnlyList<NameMove> moves, SpeciesCollection before) =>
    [
        .. from genus in before.Genera
           let leaving = moves.Where(m => m.Entry.Genus == genus.Name && m.Name.Genus != genus.Name).ToList()
           where leaving.Count == genus.Entries.Count
           select new EmptiedGenus(genus.Name, [.. leaving.Select(m => m.Name.Genus).Distinct()]),
    ];
}
