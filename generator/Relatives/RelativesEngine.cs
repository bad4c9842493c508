using CareSheets.Collection;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// Asks the relatives: one engine behind estimates, audit and drafts. Each figure's middle is a sum of
/// nested random effects along the classification (Henderson 1975, Biometrics 31:423-447; for fishes by
/// taxonomic rank Thorson et al. 2017). Each stated value is held against what the others foretell, and
/// over all values of the collection the false discovery rate is kept (Benjamini and Hochberg 1995).
/// One wrong value must not hide another: the fits are made again without those flagged, until the same
/// ones are flagged twice.
/// </summary>
public sealed partial class RelativesEngine
{
    /// <summary>Share of false alarms among the flagged that the audit allows on average.</summary>
    public const double FalseDiscoveryRate = 0.05;

    private const int MostRounds = 8;

    private readonly Kinship _kinship;

    private RelativesEngine(SpeciesCollection collection)
    {
        Collection = collection;
        _kinship = new Kinship(collection);
    }

    public SpeciesCollection Collection { get; }

    internal Kinship Kinship => _kinship;

    internal IReadOnlyList<FigureFit> Fits { get; private set; } = [];

    internal OtherFigures? Others { get; private set; }

    /// <summary>Every stated value that does not fit, accepted ones among them, by entry and figure.</summary>
    public IReadOnlyList<Outlier> Outliers { get; private set; } = [];

    public static RelativesEngine Ask(SpeciesCollection collection)
    {
        var engine = new RelativesEngine(collection);
        engine.Run();
        return engine;
    }

    private void Run()
    {
        var figures = ComparedFigure.All(Collection.Figures);
        var flagged = new HashSet<(int Figure, int Entry)>();
        for (var round = 0; round < MostRounds; round++)
        {
            Ask(figures, flagged);
            var next = Flag();
            if (next.SetEquals(flagged))
                break;
            flagged = next;
        }
        Outliers =
        [
            .. flagged.OrderBy(f => f.Entry).ThenBy(f => f.Figure)
                .Select(f => OutlierMaker.Make(this, f.Figure, f.Entry)),
        ];
    }

    private void Ask(IReadOnlyList<ComparedFigure> figures, IReadOnlySet<(int Figure, int Entry)> aside)
    {
        Fits =
        [
            .. figures.Index().AsParallel().AsOrdered().Select(f => FigureFit.Make(
                f.Item, _kinship, aside.Where(x => x.Figure == f.Index).Select(x => x.Entry).ToHashSet())),
        ];
        var deviates = new double?[figures.Count, _kinship.Entries.Count];
        foreach (var (figure, fit) in Fits.Index())
        {
            for (var entry = 0; entry < fit.Values.Count; entry++)
                deviates[figure, entry] = aside.Contains((figure, entry)) ? null : fit.Deviate(entry);
        }
        Others = new OtherFigures(deviates);
    }

    /// <summary>What relatives and the entry's own other figures foretell of a figure's middle.</summary>
    internal Normal? Foretold(int figure, int entry) =>
        Fits[figure].Foretold(entry) is { } foretold ? Others!.Adjust(figure, entry, foretold) : null;

    /// <summary>The number of a figure by its field, or nothing when relatives are not compared on it.</summary>
    internal int? FigureOf(string field)
    {
        for (var figure = 0; figure < Fits.Count; figure++)
        {
            if (Fits[figure].Figure.Field == field)
                return figure;
        }
        return null;
    }

    private IEnumerable<(int Figure, int Entry, double Z)> Tests() =>
        from fit in Fits.Index()
        from value in fit.Item.Values.Index()
        where value.Item is not null && fit.Item.Figure.IsAudited
        let foretold = Foretold(fit.Index, value.Index)
        where foretold is not null
        select (fit.Index, value.Index, foretold.Z(value.Item!.Value.Middle));

    /// <summary>
    /// How far ordinary deviates really scatter: 1 if the fit's variances are right. Where many values
    /// were set aside they are too small, and the deviates of the others say by how much (the idea of
    /// an empirical null: Efron 2004, JASA 99:96-104). Never below 1.
    /// </summary>
    private static double SpreadOf(double[] deviates) =>
        Math.Max(1, SortedSample.From([.. deviates.Select(Math.Abs)]).Median!.Value * 1.4826);

    private HashSet<(int Figure, int Entry)> Flag()
    {
        var tests = Tests().ToList();
        var spread = tests.GroupBy(t => t.Figure).ToDictionary(g => g.Key, g => SpreadOf([.. g.Select(t => t.Z)]));
        var adjusted = AdjustedP.BenjaminiHochberg(
            [.. tests.Select(t => TailProbability.TwoSidedNormal(t.Z / spread[t.Figure]))]);
        return [.. tests.Where((_, i) => adjusted[i] <= FalseDiscoveryRate).Select(t => (t.Figure, t.Entry))];
    }
}
