using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;

namespace CareSheets.Commands;

/// <summary>
/// Entries whose names are so near to a new one that it may be theirs misspelt, by the rules with which names of
/// packing lists are matched.
/// </summary>
internal static class NearEntries
{
    private const int MostShown = 3;

    /// <summary>The question to whoever types the name; nothing where no name is near.</summary>
    public static string? Question(SpeciesCollection collection, ScientificName name)
    {
        var match = CollectionNames.Matcher(collection).Match(WrittenName.Of(name.ToString()));
        var near = match.Others.Prepend(match.Taken).OfType<MatchCandidate>()
            .Where(c => c.Rung is MatchRung.Spelling or MatchRung.Near).Take(MostShown)
            .Select(c => c.By == c.Species.Valid.ToString() ? c.By : $"{c.By}, now {c.Species.Valid}").ToList();
        return near.Count == 0 ? null
            : $"{name} has no entry, and {string.Join(" or ", near)}, which has one, is near to it. " +
                "If that is meant, nothing has to be drafted. If it is another species, say so with --new.";
    }
}
