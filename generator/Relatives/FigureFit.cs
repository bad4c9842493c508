using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>What all relatives together say of one figure: a fit of its middles, and one of its widths.</summary>
/// <param name="Values">What each entry states on the figure's scale; nothing where it states nothing.</param>
/// <param name="Middles">The fit, or the reason why there is none.</param>
internal sealed record FigureFit(
    ComparedFigure Figure, ComparisonScale Scale, IReadOnlyList<ScaledRange?> Values,
    FitOutcome Middles, FitOutcome Widths)
{
    /// <summary>Entries whose value taught the others nothing.</summary>
    public required IReadOnlySet<int> SetAside { get; init; }

    /// <summary>The logarithm of the width, where all have the same; else nothing.</summary>
    public double? OnlyLogWidth =>
        Widths.Problem?.Kind == FitProblemKind.NoVariance
            ? Values.Select(v => v?.LogWidth).FirstOrDefault(w => w is not null)
            : null;

    /// <param name="setAside">Entries whose value must not teach the others anything.</param>
    public static FigureFit Make(ComparedFigure figure, Kinship kinship, IReadOnlySet<int> setAside)
    {
        var scale = new ComparisonScale(figure.Declaration);
        var values = kinship.Entries.Select(e => StatedBy(e, figure, scale)).ToList();
        return Make(figure, scale, values, kinship, setAside);
    }

    public static FigureFit Make(
        ComparedFigure figure, ComparisonScale scale, IReadOnlyList<ScaledRange?> values,
        Kinship kinship, IReadOnlySet<int> setAside)
    {
        FitOutcome Fit(Func<ScaledRange, double?> part) => VarianceEstimation.Estimate(
            NestedSample.From(
                kinship.Tree,
                [.. values.Select((v, i) => v is { } value && !setAside.Contains(i) ? part(value) : null)]),
            VariancePrior.Weak);
        return new FigureFit(figure, scale, values, Fit(v => v.Middle), Fit(v => v.LogWidth))
        {
            SetAside = setAside,
        };
    }

    /// <summary>The same fit beside what an entry states now.</summary>
    public FigureFit With(int index, Species.Entry entry)
    {
        var values = Values.ToArray();
        values[index] = StatedBy(entry, Figure, Scale);
        return this with { Values = values };
    }

    /// <summary>As a row beside which other figures are foretold.</summary>
    public Row ToRow() => new(
        entry => StatedBy(entry, Figure, Scale)?.Middle,
        [.. Values.Select((v, entry) => SetAside.Contains(entry) ? null : v?.Middle)],
        [.. Values.Select((_, entry) => Foretold(entry))]);

    private static ScaledRange? StatedBy(Species.Entry entry, ComparedFigure figure, ComparisonScale scale) =>
        figure.Own(entry) is { } own ? scale.Of(own.Value) : null;

    /// <summary>What the others say of an entry's middle, its own value left out; nothing without a fit.</summary>
    public Normal? Foretold(int entry) => Middles.Fit?.Predictions.WithoutOwnValue(entry);

    /// <summary>How far an entry's middle lies from what relatives foretell, in standard deviations.</summary>
    public double? Deviate(int entry) =>
        Values[entry] is { } value && Foretold(entry) is { } foretold ? foretold.Z(value.Middle) : null;
}
