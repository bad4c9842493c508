using System.Collections.Concurrent;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// What an entry's other figures say about one of them: a fish that is softer-watered than its
/// relatives is likely to be kept more acid too, a larger one in a larger tank. The deviates of one
/// figure from what relatives foretell are regressed on those of the others that the entry states: a
/// figure that it lacks can't make anyone surer. They are used only where, on this very collection, they
/// lower the leave-one-out error by a tenth.
/// </summary>
internal sealed class OtherFigures
{
    /// <summary>Fewest entries with a value from which weights are learnt.</summary>
    private const int FewestEntries = 30;

    /// <summary>The part of the error that must be saved.</summary>
    private const double WorthIt = 0.10;

    private readonly double?[,] _deviates;
    private readonly ConcurrentDictionary<(int Figure, string Used), FigureLesson?> _lessons;

    /// <param name="deviates">By figure and entry; nothing where unknown or set aside.</param>
    public OtherFigures(double?[,] deviates)
    {
        _deviates = deviates;
        _lessons = new();
        var figures = Enumerable.Range(0, deviates.GetLength(0)).ToList();
        Savings = [.. figures.Select(f => Lesson(f, [.. figures.Where(o => o != f)])?.Saving ?? 0)];
    }

    private OtherFigures(OtherFigures learnt, double?[,] deviates) =>
        (_deviates, _lessons, Savings) = (deviates, learnt._lessons, learnt.Savings);

    /// <summary>What was learnt, beside other deviates of one entry.</summary>
    public OtherFigures With(int entry, IReadOnlyList<double?> own)
    {
        var deviates = (double?[,])_deviates.Clone();
        for (var figure = 0; figure < own.Count; figure++)
            deviates[figure, entry] = own[figure];
        return new OtherFigures(this, deviates);
    }

    /// <summary>By figure, the share of the leave-one-out error that all others save; below 0 if they harm.</summary>
    public double[] Savings { get; }

    /// <summary>A forecast of one figure, moved by what the entry's other figures say.</summary>
    public Normal Adjust(int figure, int entry, Normal foretold) =>
        Adjust(Lesson(figure, Stated(figure, entry)), entry, foretold);

    /// <summary>The same learnt without that entry, for an honest record of this adjustment.</summary>
    public Normal AdjustUnseen(int figure, int entry, Normal foretold)
    {
        var used = Stated(figure, entry);
        return Lesson(figure, used) is { } all && all.Saving >= WorthIt
            ? Adjust(FigureLesson.Learn(_deviates, figure, used, Entries(figure, entry)), entry, foretold)
            : foretold;
    }

    private Normal Adjust(FigureLesson? lesson, int entry, Normal foretold) =>
        lesson is null || lesson.Saving < WorthIt
            ? foretold
            : Normal.From(
                foretold.Mean + lesson.Predict(_deviates, entry) * foretold.StandardDeviation,
                foretold.StandardDeviation * Math.Sqrt(lesson.Share));

    /// <summary>Nothing where there is too little to learn from.</summary>
    private FigureLesson? Lesson(int figure, SortedSet<int> used) =>
        _lessons.GetOrAdd((figure, string.Join(',', used)), _ =>
        {
            var entries = Entries(figure, -1);
            return used.Count == 0 || entries.Count < FewestEntries
                ? null
                : FigureLesson.Learn(_deviates, figure, used, entries);
        });

    private SortedSet<int> Stated(int figure, int entry) =>
        [.. Enumerable.Range(0, _deviates.GetLength(0)).Where(f => f != figure && _deviates[f, entry] is not null)];

    private List<int> Entries(int figure, int without) =>
        [.. Enumerable.Range(0, _deviates.GetLength(1)).Where(e => e != without && _deviates[figure, e] is not null)];
}
