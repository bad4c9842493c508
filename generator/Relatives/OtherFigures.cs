using System.Collections.Concurrent;
using CareSheets.Species;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// What an entry's other figures and its traits say about one figure: a fish that is softer-watered than
/// its relatives is likely to be kept more acid too, a larger one in a larger tank. They enter as fixed
/// effects beside the nested ones; of an entry, only those that it states: a figure that it lacks can't
/// make anyone surer. They are used only where, on this very collection, they lower the leave-one-out
/// error by a tenth.
/// </summary>
internal sealed class OtherFigures
{
    /// <summary>Fewest entries with a number from which weights are learnt.</summary>
    private const int FewestEntries = 30;

    /// <summary>The part of the error that must be saved.</summary>
    private const double WorthIt = 0.10;

    private const double Ridge = 0.05;

    private readonly NestedTree _tree;
    private readonly IReadOnlyList<Row> _rows;
    private readonly IReadOnlyList<FigureFit> _fits;
    private readonly ConcurrentDictionary<(int Figure, string Used), Lesson?> _lessons = new();
    private readonly ConcurrentDictionary<(int Figure, int Entry), Normal?> _foretold = new();

    /// <param name="rows">The figures' rows in the order of their fits, then the traits'.</param>
    /// <param name="helps">By figure, whether to use the others, where that is already decided.</param>
    public OtherFigures(
        NestedTree tree, IReadOnlyList<FigureFit> fits, IReadOnlyList<Row> rows, IReadOnlyList<bool>? helps)
    {
        (_tree, _rows, _fits) = (tree, rows, fits);
        Savings = [.. fits.Index().AsParallel().AsOrdered()
            .Select(f => LessonOf(f.Index, [.. Usable(f.Index)])?.Saving ?? 0)];
        Helps = helps ?? [.. Savings.Select(saving => saving >= WorthIt)];
    }

    private OtherFigures(OtherFigures learnt, IReadOnlyList<Row> rows)
    {
        (_tree, _rows, _fits, _lessons) = (learnt._tree, rows, learnt._fits, learnt._lessons);
        (Savings, Helps) = (learnt.Savings, learnt.Helps);
    }

    /// <param name="Saving">Part of the mean absolute error that it saves; below 0 if it harms.</param>
    private sealed record Lesson(NestedRegression Regression, double Saving);

    /// <summary>By figure, the share of the leave-one-out error that all others save; below 0 if they harm.</summary>
    public double[] Savings { get; }

    /// <summary>What was learnt, beside what one entry says now.</summary>
    /// <param name="aside">Its figures that must not speak of others.</param>
    public OtherFigures With(int index, Entry entry, IReadOnlySet<int> aside) => new(
        this, [.. _rows.Select((row, i) => row.With(index, aside.Contains(i) ? null : row.Of(entry)))]);

    /// <summary>By figure, whether the others are used.</summary>
    public IReadOnlyList<bool> Helps { get; }

    /// <summary>What relatives and the entry's other numbers foretell, its own value left out.</summary>
    public Normal? Foretold(int figure, int entry) =>
        _foretold.GetOrAdd((figure, entry), asked => Ask(asked.Figure, asked.Entry));

    /// <summary>The same, had the entry not stated one of its other figures.</summary>
    public Normal? ForetoldWithout(int row, int figure, int entry) => Ask(figure, entry, row);

    private Normal? Ask(int figure, int entry, int without = -1)
    {
        int[] used = [.. Usable(figure).Where(row => row != without && _rows[row].Values[entry] is not null)];
        return Helps[figure] && LessonOf(figure, used) is { Saving: > 0 } lesson
            ? lesson.Regression.WithoutOwnValue(entry, [.. used.Select(row => _rows[row].Number(entry))])
            : _fits[figure].Foretold(entry);
    }

    /// <summary>Whether the entry's other figures had a part in what <see cref="Foretold"/> says.</summary>
    public bool IsUsed(int figure, int entry) =>
        Helps[figure] && Usable(figure).Any(row => _rows[row].Values[entry] is not null);

    private IEnumerable<int> Usable(int figure) =>
        Enumerable.Range(0, _rows.Count).Where(row => row != figure && _rows[row].Known >= FewestEntries);

    private Lesson? LessonOf(int figure, IReadOnlyList<int> used) =>
        _lessons.GetOrAdd((figure, string.Join(',', used)), _ => Learn(figure, used));

    /// <summary>Nothing where there is too little to learn from.</summary>
    private Lesson? Learn(int figure, IReadOnlyList<int> used)
    {
        if (used.Count == 0 || _rows[figure].Known < FewestEntries || _fits[figure].Middles.Fit is not { } plain)
            return null;
        var sample = NestedSample.From(_tree, _rows[figure].Values);
        double[][] columns = [.. used.Select(row => _rows[row].Column())];
        var first = NestedRegression.Compute(sample, columns, plain.Variances, Ridge);
        var left = VarianceEstimation.Estimate(NestedSample.From(_tree, first.Remainders()), VariancePrior.Weak);
        if (left.Fit is not { } remainder)
            return null;
        var regression = NestedRegression.Compute(
            sample, columns, Widened(remainder.Variances, sample.Count, columns.Length), Ridge);
        var after = Error(figure, e => regression.WithoutOwnValue(e, [.. columns.Select(c => c[e])]));
        var before = Error(figure, _fits[figure].Foretold);
        return new Lesson(regression, before > 0 ? 1 - after / before : 0);
    }

    /// <summary>Variances of what is left when k weights were fitted are too small by (n - 1) / (n - 1 - k).</summary>
    private static RankVariances Widened(RankVariances variances, int count, int weights)
    {
        var factor = (count - 1.0) / Math.Max(count - 1 - weights, count / 2.0);
        return RankVariances.From([.. variances.Values.Select(v => v * factor)]);
    }

    private double Error(int figure, Func<int, Normal?> foretold) =>
        _rows[figure].Values.Select((value, entry) =>
            value is { } known && foretold(entry) is { } normal ? Math.Abs(normal.Mean - known) : 0).Sum();
}
