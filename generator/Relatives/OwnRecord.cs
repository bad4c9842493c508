using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// The engine's own record: every stated value is foretold without it, and again without its genus, and
/// then compared. Variances come from all values, those left out among them; all else does not. Values
/// that the audit flagged teach nobody, but are foretold and counted like the others.
/// </summary>
public static class OwnRecord
{
    private static readonly double[] Claims = [0.5, 0.8, 0.95];

    /// <summary>Equally likely values that stand for a forecast when it is scored in the figure's unit.</summary>
    private const int Members = 400;

    public static IReadOnlyList<RecordLine> Keep(RelativesEngine engine) =>
    [
        .. from left in Enum.GetValues<LeftOut>()
           from figure in Enumerable.Range(0, engine.Fits.Count)
           let cases = Cases(engine, figure, left)
           where cases.Count >= EstimateMaker.FewestValues
           select Line(engine.Fits[figure], left, cases),
    ];

    /// <param name="Value">The stated middle on the figure's scale, as are all three.</param>
    private sealed record Case(double Value, Normal Foretold, double Nearest, double Overall);

    private static List<Case> Cases(RelativesEngine engine, int figure, LeftOut left)
    {
        var fit = engine.Fits[figure];
        var cases = new List<Case>();
        for (var entry = 0; entry < fit.Values.Count; entry++)
        {
            var others = Others(engine, fit, entry, left);
            if (fit.Values[entry] is { } value && others.Count > 0 &&
                Foretold(engine, figure, entry, left) is { } foretold)
                cases.Add(new Case(
                    value.Middle, foretold, Nearest(engine, fit, entry, others), Mean(fit, others)));
        }
        return cases;
    }

    private static Normal? Foretold(RelativesEngine engine, int figure, int entry, LeftOut left)
    {
        var fit = engine.Fits[figure];
        return left switch
        {
            LeftOut.Species => engine.Foretold(figure, entry),
            LeftOut.Entry => fit.Foretold(entry),
            LeftOut.Genus => fit.Middles.Fit?.Predictions.WithoutGroup(entry, Kinship.Genus),
        };
    }

    /// <summary>Those who may be asked: they state the figure, were not set aside, and are not left out.</summary>
    private static List<int> Others(RelativesEngine engine, FigureFit fit, int entry, LeftOut left)
    {
        var tree = engine.Kinship.Tree;
        bool IsLeftOut(int other) => left switch
        {
            LeftOut.Species or LeftOut.Entry => other == entry,
            LeftOut.Genus => Shares(tree, entry, other, Kinship.Genus),
        };
        return [.. Enumerable.Range(0, fit.Values.Count)
            .Where(o => fit.Values[o] is not null && !fit.SetAside.Contains(o) && !IsLeftOut(o))];
    }

    private static bool Shares(NestedTree tree, int one, int other, int rank) =>
        tree.AncestorOf(one, rank) == tree.AncestorOf(other, rank);

    private static double Nearest(RelativesEngine engine, FigureFit fit, int entry, List<int> others)
    {
        for (var rank = Kinship.Genus; rank >= Kinship.Order; rank--)
        {
            var near = others.Where(o => Shares(engine.Kinship.Tree, entry, o, rank)).ToList();
            if (near.Count > 0)
                return Mean(fit, near);
        }
        return Mean(fit, others);
    }

    private static double Mean(FigureFit fit, List<int> entries) =>
        entries.Average(e => fit.Values[e]!.Value.Middle);

    private static RecordLine Line(FigureFit fit, LeftOut left, List<Case> cases)
    {
        double Off(double scaled, Case one) => Math.Abs(fit.Scale.From(scaled) - fit.Scale.From(one.Value));
        return new RecordLine(
            fit.Figure, left, cases.Count, [.. Claims.Select(c => Count(cases, c))],
            cases.Average(c => Off(c.Foretold.Mean, c)),
            cases.Average(c => Off(c.Nearest, c)),
            cases.Average(c => Off(c.Overall, c)),
            cases.Average(c => Crps(fit.Scale, c)));
    }

    private static CoverageCount Count(List<Case> cases, double claim)
    {
        var (low, high) = Coverage.AcceptanceBand(cases.Count, claim);
        return new CoverageCount(
            claim, cases.Count(c => c.Foretold.CentralInterval(claim).Contains(c.Value)), low, high);
    }

    private static double Crps(ComparisonScale scale, Case one)
    {
        var members = Enumerable.Range(0, Members)
            .Select(k => scale.From(one.Foretold.Quantile((k + 0.5) / Members))).ToArray();
        return EnsembleScore.Crps(SortedSample.From(members), scale.From(one.Value))!.Value;
    }
}
