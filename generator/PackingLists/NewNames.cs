using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>
/// Scientific names of species that have no entry. Nobody here knows whether such a name is valid, so its line is
/// asked and the name is offered for a draft. A name near to a known one may be a misspelling, and one in a genus
/// from which species have moved may be outdated: those are not offered.
/// </summary>
public sealed class NewNames(SpeciesCollection collection)
{
    /// <summary>Nothing where the line was taken, or names no species that relatives here can draft.</summary>
    public ScientificName? Of(MatchedLine line) =>
        line.Entry is null && line.Line.Reading is { Name: { Subspecies: null } name, IsPlain: true, Rest.Length: 0 } &&
        !line.Line.Reading.Problems.Contains(NameProblem.NotLatinLetters) &&
        ListWords.Find(name.Epithet) is null &&
        line.Match.Doubt is Doubt.GenusExists or Doubt.NothingLikeIt &&
        !line.Match.Others.Any(o => o.Rung is MatchRung.Near or MatchRung.OtherGenus or MatchRung.TradeCode) &&
        HasRelatives(name.Genus)
            ? name
            : null;

    private bool HasRelatives(string genus) =>
        collection.Genera.Any(g => g.Name == genus) ||
        (collection.FormerGenera.All(f => f.Former != genus) &&
            GenusTable.Known.Find(genus) is { Family: var family } && collection.Families.Any(f => f.Name == family));
}
