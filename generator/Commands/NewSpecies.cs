using CareSheets.Arrivals;
using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>
/// Drafts of entries for species that a list names in full and that have none. A name near to a known one
/// may be a misspelling, and one in a genus from which species have moved may be outdated: those are asked.
/// </summary>
internal static class NewSpecies
{
    public static DraftedList Draft(PackingList list, SpeciesCollection collection)
    {
        var former = collection.FormerNames.Values.Select(f => f.Name.Genus).ToHashSet();
        var places = list.Lines.Select(l => (Line: l, Place: PlaceOf(l, collection, former)))
            .Where(l => l.Place is not null).ToDictionary(l => l.Line, l => l.Place!);
        if (places.Count == 0)
            return new DraftedList(list, []);
        var engine = RelativesEngine.Ask(collection);
        List<Draft> drafts =
        [
            .. places.DistinctBy(p => p.Key.Line.Reading.Name)
                .Select(p => DraftMaker.Make(engine, p.Key.Line.Reading.Name!, p.Value)),
        ];
        return new DraftedList(
            list with { Lines = [.. list.Lines.Select(l => places.ContainsKey(l) ? Taken(l) : l)] }, drafts);
    }

    private static MatchedLine Taken(MatchedLine line) =>
        line with { Entry = line.Line.Reading.Name!.Slug, Taken = NameTaken.Exact };

    private static NewPlace? PlaceOf(MatchedLine line, SpeciesCollection collection, HashSet<string> former)
    {
        var read = line.Line.Reading;
        if (line.Entry is not null || read.Name is not { Subspecies: null } name || !read.IsPlain ||
            read.Rest.Length > 0 || read.Problems.Contains(NameProblem.NotLatinLetters) ||
            line.Match.Doubt is not (Doubt.GenusExists or Doubt.NothingLikeIt) ||
            line.Match.Others.Any(o => o.Rung is MatchRung.Near or MatchRung.OtherGenus or MatchRung.TradeCode) ||
            collection.Known.Entries.Contains(name.Slug))
            return null;
        if (collection.Genera.FirstOrDefault(g => g.Name == name.Genus) is { } genus)
            return Place(name.Genus, genus.Parent, collection);
        return !former.Contains(name.Genus) && GenusTable.Known.Find(name.Genus) is { } known
            ? Place(name.Genus, known.Family, collection)
            : null;
    }

    private static NewPlace? Place(string genus, string family, SpeciesCollection collection) =>
        collection.Families.FirstOrDefault(f => f.Name == family) is { } known
            ? new NewPlace(genus, known.Name, known.Parent)
            : null;
}
