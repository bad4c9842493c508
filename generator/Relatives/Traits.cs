using CareSheets.Species;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// What an entry says in words about a fish and its waters, as numbers that relatives can be compared
/// on: the mouth, the group, the kinds of habitat. A fish of black water among relatives of clear streams
/// is likely kept more acid than they are; one with a larger mouth than theirs is likely longer.
/// </summary>
internal static class Traits
{
    private static readonly string[] Mouths = ["tiny", "small", "medium", "large"];

    /// <summary>Fewest entries that must differ from the others in a trait to teach anything.</summary>
    private const int FewestUnlike = 3;

    /// <summary>A row for each trait in which at least a few entries differ.</summary>
    public static IReadOnlyList<Row> Of(Kinship kinship) =>
    [
        .. All.AsParallel().AsOrdered()
            .Select(trait => Compared(kinship, trait))
            .OfType<Row>(),
    ];

    private static IEnumerable<Func<Entry, double?>> All =>
    [
        e => Array.IndexOf(Mouths, e.Adult.Mouth.Value) is >= 0 and var mouth ? mouth : null,
        e => Math.Log(e.Company.Group.Value),
        .. HabitatKind.All.Select(kind => (Func<Entry, double?>)(e => Is(kind, e))),
    ];

    private static double? Is(HabitatKind kind, Entry entry) =>
        entry.Origin.Habitats.Count == 0 ? null
        : kind.IsOf(entry.Origin.Habitats.Select(h => h.Value)) ? 1 : 0;

    private static Row? Compared(Kinship kinship, Func<Entry, double?> trait)
    {
        var values = kinship.Entries.Select(trait).ToArray();
        var most = values.OfType<double>().GroupBy(v => v).Select(g => g.Count()).DefaultIfEmpty(0).Max();
        if (values.Count(v => v is not null) - most < FewestUnlike)
            return null;
        var fit = VarianceEstimation.Estimate(NestedSample.From(kinship.Tree, values), VariancePrior.Weak).Fit;
        return fit is null
            ? null
            : new Row(trait, values, [.. values.Select((_, i) => fit.Predictions.WithoutOwnValue(i))]);
    }
}
