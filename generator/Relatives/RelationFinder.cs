using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>Finds who the nearest relatives with a value of their own are.</summary>
internal static class RelationFinder
{
    private const int FewestToSee = 4;
    private const int MostToSee = 30;

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

    /// <summary>Without those whose value was set aside as odd; for a species with an entry or none.</summary>
    public static Relations Teachers(
        RelativesEngine engine, FigureFit fit, string genus, string family, string order, string self)
    {
        var others = fit.Values.Index()
            .Where(v => v.Item is not null && !fit.SetAside.Contains(v.Index))
            .Select(v => engine.Kinship.Entries[v.Index])
            .Where(e => e.Name != self)
            .Select(e => new Relation(e, fit.Figure.Own(e)!))
            .ToList();
        return Nearest(others, genus, family, order);
    }

    /// <summary>
    /// Relatives enough to see a value among: those of the genus, and where they are fewer than
    /// <see cref="FewestToSee"/>, of the family, the order, and then all; at most <see cref="MostToSee"/>.
    /// </summary>
    public static IReadOnlyList<Relation> Around(RelativesEngine engine, Outlier outlier)
    {
        var (fit, self) = (engine.Fits[engine.FigureOf(outlier.Figure.Field)!.Value], outlier.Entry);
        var others = fit.Values.Index().Where(v => v.Item is not null)
            .Select(v => engine.Kinship.Entries[v.Index]).Where(e => e != self)
            .Select(e => new Relation(e, fit.Figure.Own(e)!)).ToList();
        Func<Entry, bool>[] circles =
        [
            e => e.Genus == self.Genus, e => e.Family.Value == self.Family.Value,
            e => e.Order.Value == self.Order.Value, _ => true,
        ];
        return circles.Select(c => others.Where(o => c(o.Entry)).Take(MostToSee).ToList())
            .FirstOrDefault(found => found.Count >= FewestToSee, others);
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
