using CareSheets.Collection;

namespace CareSheets.Renaming;

/// <summary>
/// Moves by which two genera become one, or by which species leave that were never meant to: what a rename of a
/// whole genus does beyond what its name says.
/// </summary>
internal static class MergedGenus
{
    public static IEnumerable<string> Lines(IReadOnlyList<NameMove> moves, SpeciesCollection before)
    {
        foreach (var target in moves.GroupBy(m => m.Name.Genus).Where(g => g.Count() > 1))
        {
            var there = before.Entries.Where(e => e.Genus == target.Key && moves.All(m => m.Entry != e))
                .Select(e => e.ScientificName.Value.ToString()).ToList();
            if (there.Count > 0)
                yield return $"{target.Key} has entries already: {string.Join(", ", there)}. A later rename of the " +
                    "whole genus takes them along, so go back species by species.";
        }
        if (moves.Any(m => m.IsBack) && moves.Where(m => !m.IsBack).ToList() is { Count: > 0 } others)
            yield return $"By their entries these never had the new name, and move along: " +
                $"{string.Join(", ", others.Select(m => m.OldName))}. Where one is to stay, rename species by species.";
    }
}
