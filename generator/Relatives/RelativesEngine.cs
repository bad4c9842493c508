using CareSheets.Collection;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// Asks the relatives: one engine behind estimates, audit and drafts. Each figure's middle is a sum of
/// nested random effects along the classification (Henderson 1975, Biometrics 31:423-447; for fishes by
/// taxonomic rank Thorson et al. 2017), with the entry's other figures beside them where those help.
/// </summary>
public sealed partial class RelativesEngine
{
    private readonly Kinship _kinship;
    private readonly IReadOnlyList<Row> _traits;
    private IReadOnlyList<bool>? _othersHelp;

    private RelativesEngine(SpeciesCollection collection, IReadOnlyList<Row>? traits = null)
    {
        Collection = collection;
        _kinship = new Kinship(collection);
        _traits = traits ?? Traits.Of(_kinship);
        Figures = ComparedFigure.All(collection.Figures);
    }

    public SpeciesCollection Collection { get; }

    internal IReadOnlyList<ComparedFigure> Figures { get; }

    internal Kinship Kinship => _kinship;

    internal IReadOnlyList<FigureFit> Fits { get; private set; } = [];

    internal OtherFigures? Others { get; private set; }

    /// <summary>Every stated value that does not fit, accepted ones among them, by entry and figure.</summary>
    public IReadOnlyList<Outlier> Outliers { get; private set; } = [];

    /// <summary>How far every stated value lies from what the others foretell.</summary>
    internal IReadOnlyList<Tested> Tests { get; private set; } = [];

    public static RelativesEngine Ask(SpeciesCollection collection)
    {
        var engine = new RelativesEngine(collection);
        var search = new OutlierSearch(engine);
        (engine.Outliers, engine.Tests) = (search.Run(), search.Tests);
        return engine;
    }

    /// <summary>Fits every figure anew; values set aside teach nobody, but are foretold like the others.</summary>
    internal void Fit(IReadOnlySet<(int Figure, int Entry)> aside)
    {
        Fits =
        [
            .. Figures.Index().AsParallel().AsOrdered().Select(f => FigureFit.Make(
                f.Item, _kinship, aside.Where(x => x.Figure == f.Index).Select(x => x.Entry).ToHashSet())),
        ];
        Others = new OtherFigures(_kinship.Tree, Fits, [.. Fits.Select(f => f.ToRow()), .. _traits], _othersHelp);
        _othersHelp ??= Others.Helps; // decided once, or a value at the edge would come and go
    }

    /// <summary>What relatives and the entry's own other figures foretell of a figure's middle.</summary>
    internal Normal? Foretold(int figure, int entry) => Others!.Foretold(figure, entry);

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
}
