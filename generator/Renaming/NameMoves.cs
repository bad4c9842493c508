using CareSheets.Collection;
using CareSheets.Names;

namespace CareSheets.Renaming;

/// <summary>
/// Reads what is to be renamed: <c>Old name=New name</c> for one species, <c>Old=New</c> for all species
/// of a genus, whose adjectives then take the gender of the new one.
/// </summary>
public static class NameMoves
{
    /// <summary>The moves, or in words why there are none.</summary>
    public static (IReadOnlyList<NameMove> Moves, string Problem) Read(
        string from, string to, SpeciesCollection collection)
    {
        var (oldName, newName) = (ScientificName.Parse(from.Trim()), ScientificName.Parse(to.Trim()));
        if (newName is null && (oldName is not null || !IsGenus(to.Trim())))
            return ([], NoName(to.Trim(), oldName is not null));
        var moves = oldName is not null && newName is not null ? Species(oldName, newName, collection)
            : oldName is null && newName is null ? Genus(from.Trim(), to.Trim(), collection)
            : [];
        var problem = moves.Count > 0 ? Problem(moves, collection)
            : $"No entry is called {from.Trim()} today. Write an old and a new name, both of a species as in " +
              "\"Danio rerio\" or both of a genus, in the spelling of the entries. " +
              CollectionLinker.Suggest(from.Trim(), Names(collection));
        return (problem.Length == 0 ? moves : [], problem);
    }

    private static bool IsGenus(string word) => ScientificName.Parse($"{word} aa") is not null;

    /// <summary>Why a text can't be a new name, and the name that it may have been meant for.</summary>
    private static string NoName(string text, bool isOfSpecies)
    {
        var meant = NameReader.Read(text) is var read && isOfSpecies ? read.Name?.ToString() : read.Genus;
        return $"{(text.Length == 0 ? "Nothing" : text)} can't be a new name: write " + (isOfSpecies
            ? "a genus with a capital and an epithet in small letters, as in Danio rerio."
            : "a genus with a capital and the rest in small letters, as in Danio.") +
            (meant is { Length: > 0 } && meant != text ? $" Did you mean {meant}?" : "");
    }

    private static List<NameMove> Species(ScientificName from, ScientificName to, SpeciesCollection collection) =>
        [.. collection.Entries.Where(e => e.ScientificName.Value == from).Select(e => new NameMove(e, to))];

    private static List<NameMove> Genus(string from, string to, SpeciesCollection collection) =>
    [
        .. from entry in collection.Entries
           where entry.Genus == @from
           let epithet = GenderEnding.Agreeing(to, entry.ScientificName.Value.Epithet, GenusTable.Known)
           let subspecies = entry.ScientificName.Value.Subspecies
           let name = ScientificName.Parse(subspecies is null ? $"{to} {epithet}" : $"{to} {epithet} {subspecies}")
           where name is not null
           select new NameMove(entry, name),
    ];

    private static string Problem(IReadOnlyList<NameMove> moves, SpeciesCollection collection)
    {
        foreach (var move in moves)
        {
            if (move.Name == move.OldName)
                return $"{move.Name} is what the entry is called already.";
            if (collection.Known.Entries.Contains(move.Name.Slug))
                return $"There is an entry of {move.Name} already.";
            if (collection.Find(move.Name.Slug) is { } other && other != move.Entry)
                return $"{move.Name} is a former name of {other.ScientificName.Value}.";
        }
        return "";
    }

    private static IEnumerable<string> Names(SpeciesCollection collection) =>
        collection.Entries.Select(e => e.ScientificName.Value.ToString()).Concat(collection.Genera.Select(g => g.Name));
}
