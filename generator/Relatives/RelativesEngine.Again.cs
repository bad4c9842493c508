using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Relatives;

public sealed partial class RelativesEngine
{
    /// <summary>
    /// The same engine after one entry was written anew: its values are held against what the others taught at the
    /// last full asking, without asking all of them again. What a species' own value teaches its relatives
    /// waits for the next full asking. Only outliers of that entry are found.
    /// </summary>
    /// <param name="changed">The collection with the entry in it as it is now.</param>
    /// <param name="entry">The entry as it is now.</param>
    /// <returns>Nothing when the classification has changed, for then all must be asked.</returns>
    public RelativesEngine? Again(SpeciesCollection changed, Entry entry)
    {
        if (!IsSameTree(changed))
            return null;
        var engine = new RelativesEngine(changed, _traits) { _othersHelp = _othersHelp };
        engine.Listen(this, engine.Kinship.IndexOf(entry));
        return engine;
    }

    private bool IsSameTree(SpeciesCollection changed) =>
        Collection.Entries.Count == changed.Entries.Count &&
        Collection.Entries.Zip(changed.Entries).All(pair =>
            ReferenceEquals(pair.First, pair.Second) || PlaceOf(pair.First) == PlaceOf(pair.Second));

    private static (string, string, string, string) PlaceOf(Entry entry) =>
        (entry.Name, entry.Genus, entry.Family.Value, entry.Order.Value);

    private void Listen(RelativesEngine learnt, int index)
    {
        Fits = [.. learnt.Fits.Select(f => f.With(index, Kinship.Entries[index]))];
        Others = learnt.Others!;
        var search = new OutlierSearch(this);
        Outliers = search.Again(index, learnt.Tests, aside =>
            Others = learnt.Others!.With(index, Kinship.Entries[index], aside));
        Tests = search.Tests;
    }
}
