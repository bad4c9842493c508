using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>Finds who the nearest relatives with a value of their own are.</summary>
internal static class RelationFinder
{
    public static Relations Find(RelativesEngine engine, FigureFit fit, Entry entry)
    {
        var others = engine.Collection.Entries
            .Where(e => e.Name != entry.Name)
            .Select(e => (Entry: e, Stated: fit.Figure.Own(e)))
            .Where(e => e.Stated is not null && fit.Scale.Of(e.Stated.Value) is not null)
            .Select(e => new Relation(e.Entry, e.Stated!))
            .ToList();
        return Nearest(others, entry.Genus, entry.Family.Value, entry.Order.Value);
    }

    public static Relations Nearest(IReadOnlyList<Relation> others, string genus, string family, string order)
    {
        var ranks = new (TaxonRank Rank, Func<Entry, bool> Shares)[]
        {
            (TaxonRank.Genus, e => e.Genus == genus),
            (TaxonRank.Family, e => e.Family.Value == family),
            (TaxonRank.Order, e => e.Order.Value == order),
        };
        foreach (var (rank, shares) in ranks)
        {
            var found = others.Where(o => shares(o.Entry)).ToList();
            if (found.Count > 0)
                return new Relations(rank, found, others.Count);
        }
        return new Relations(null, [], others.Count);
    }
}
