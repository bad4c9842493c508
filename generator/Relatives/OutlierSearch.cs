using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// Holds each stated value against what the others foretell. Over all values of the collection the false
/// discovery rate is kept (Benjamini and Hochberg 1995, JRSS B 57:289-300). One wrong value must not hide
/// another: the fits are made again without those flagged, until the same ones are flagged twice.
/// </summary>
internal sealed class OutlierSearch(RelativesEngine engine)
{
    /// <summary>
    /// Share of false alarms among the flagged that is allowed on average: looking once too often costs
    /// less than a slip that stands for a year (our choice).
    /// </summary>
    public const double FalseDiscoveryRate = 0.10;

    /// <summary>
    /// Deviates from which a value that is not flagged deserves a second look, and below which an accepted
    /// one no longer stands out. About one sound value in a hundred and one in eight lie beyond.
    /// </summary>
    private const double SecondLook = 2.5, StillOdd = 1.5;

    private const int MostRounds = 8;

    /// <summary>Values from which on their own scatter may count as smaller than the fit says (our choice).</summary>
    private const int FewestForSpread = 40;

    private const double SmallestSpread = 0.7;

    private readonly HashSet<(int Figure, int Entry)> _accepted = Accepted(engine);

    /// <summary>Every stated value, as it was tested last.</summary>
    public IReadOnlyList<Tested> Tests { get; private set; } = [];

    public IReadOnlyList<Outlier> Run()
    {
        var flagged = new HashSet<(int Figure, int Entry)>();
        for (var round = 0; round < MostRounds; round++)
        {
            engine.Fit(flagged);
            Tests =
            [
                .. Enumerable.Range(0, engine.Kinship.Entries.Count).AsParallel().AsOrdered().SelectMany(TestsOf),
            ];
            var next = Flag();
            if (next.SetEquals(flagged))
                break;
            flagged = next;
        }
        return Outliers(flagged, _ => true);
    }

    /// <summary>Tests one entry anew among all others as they were tested before.</summary>
    /// <param name="setAside">Told which of its figures must not speak of the others.</param>
    public IReadOnlyList<Outlier> Again(int entry, IReadOnlyList<Tested> before, Action<IReadOnlySet<int>> setAside)
    {
        var flagged = new HashSet<(int Figure, int Entry)>();
        for (var round = 0; round < MostRounds; round++)
        {
            setAside(flagged.Select(f => f.Figure).ToHashSet());
            Tests = [.. before.Where(t => t.Entry != entry), .. TestsOf(entry)];
            var next = Flag().Where(f => f.Entry == entry).ToHashSet();
            if (next.SetEquals(flagged))
                break;
            flagged = next;
        }
        return Outliers(flagged, t => t.Entry == entry);
    }

    private IReadOnlyList<Outlier> Outliers(HashSet<(int, int)> flagged, Func<Tested, bool> asked) =>
    [
        .. Scaled().Where(asked)
            .Where(t => flagged.Contains(t.Value) || Math.Abs(t.Deviate) >= Threshold(t))
            .OrderBy(t => t.Entry).ThenBy(t => t.Figure)
            .AsParallel().AsOrdered()
            .Select(t => OutlierMaker.Make(engine, t.Figure, t.Entry, flagged.Contains(t.Value))),
    ];

    /// <summary>
    /// An acceptance has a purpose while its value stands out at all; were it to lose it whenever some
    /// other entry changes, it would come and go.
    /// </summary>
    private double Threshold(Tested test) => _accepted.Contains(test.Value) ? StillOdd : SecondLook;

    /// <summary>
    /// Values that a writer has accepted as they stand. They are true, so they teach their relatives like any
    /// other, or each true oddity taken out would make the next one look odder; they are not asked about again.
    /// </summary>
    private static HashSet<(int Figure, int Entry)> Accepted(RelativesEngine engine) =>
    [
        .. from figure in engine.Figures.Index()
           from entry in engine.Kinship.Entries.Index()
           where entry.Item.Accepted.Count > 0 && figure.Item.Own(entry.Item) is { } own &&
               OutlierMaker.AcceptanceOf(entry.Item, figure.Item, own.Value) is not null
           select (figure.Index, entry.Index),
    ];

    private IEnumerable<Tested> TestsOf(int entry) =>
        from fit in engine.Fits.Index()
        where fit.Item.Figure.IsAudited && fit.Item.Values[entry] is not null
        let foretold = engine.Foretold(fit.Index, entry)
        where foretold is not null
        select new Tested(fit.Index, entry, foretold.Z(fit.Item.Values[entry]!.Value.Middle));

    /// <summary>Every value's deviate, by the scatter of its figure's deviates.</summary>
    private IEnumerable<Tested> Scaled() => Tests.GroupBy(t => t.Figure).SelectMany(figure =>
    {
        var spread = SpreadOf([.. figure.Select(t => t.Deviate)]);
        return figure.Select(t => t with { Deviate = t.Deviate / spread });
    });

    /// <summary>
    /// How far ordinary deviates really scatter: 1 if the fit's variances are right. Where many values
    /// were set aside they are too small, where a few odd ones are among them too large, and the deviates
    /// of most say by how much (the idea of an empirical null: Efron 2004, JASA 99:96-104). From few
    /// values that can't be told, and the fit is never held for more exact than it says.
    /// </summary>
    private static double SpreadOf(double[] deviates)
    {
        var spread = SortedSample.From([.. deviates.Select(Math.Abs)]).Median!.Value * 1.4826;
        return deviates.Length < FewestForSpread ? Math.Max(1, spread) : Math.Max(SmallestSpread, spread);
    }

    private HashSet<(int Figure, int Entry)> Flag()
    {
        var tests = Scaled().Where(t => !_accepted.Contains(t.Value)).ToList();
        var adjusted = AdjustedP.BenjaminiHochberg([.. tests.Select(t => TailProbability.TwoSidedNormal(t.Deviate))]);
        return [.. tests.Where((_, i) => adjusted[i] <= FalseDiscoveryRate).Select(t => t.Value)];
    }
}
