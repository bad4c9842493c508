using CareSheets.Collection;
using CareSheets.Species;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// Estimates a range from relatives: its middle as that of a species of that place which nobody has
/// looked at, its width as the median width foretold (the exponential of a normal's mean), both from the
/// nested effects. Nobody's legal status, venom or origin is ever asked of relatives.
/// </summary>
public static class EstimateMaker
{
    /// <summary>
    /// Fewest species with a value. Intervals take the variances as known, which from fewer values they
    /// are not at all (our choice, no source).
    /// </summary>
    public const int FewestValues = 5;

    /// <summary>The share of cases in which the middle lies in the stretch that is told.</summary>
    public const double Sure = 0.8;

    /// <summary>Nothing when the schema does not compare relatives on that figure.</summary>
    public static Estimate? Make(RelativesEngine engine, Entry entry, string field)
    {
        if (engine.FigureOf(field) is not { } figure)
            return null;
        var fit = engine.Fits[figure];
        var index = engine.Kinship.IndexOf(entry);
        return Make(
            engine, fit, engine.Foretold(figure, index),
            fit.Widths.Fit?.Predictions.WithoutOwnValue(index),
            RelationFinder.Teachers(engine, fit, entry.Genus, entry.Family.Value, entry.Order.Value, entry.Name)) with
        {
            IsHelped = engine.Others!.IsUsed(figure, index),
        };
    }

    /// <summary>For a species that has no entry yet, of a known genus or else of a known family.</summary>
    public static Estimate? ForNew(RelativesEngine engine, NewPlace place, string field)
    {
        if (engine.FigureOf(field) is not { } figure)
            return null;
        var fit = engine.Fits[figure];
        Normal? Next(FitOutcome outcome) =>
            engine.Kinship.Find(TaxonRank.Genus, place.Genus) is { } genus
                ? outcome.Fit?.Predictions.NewLeafUnder(Kinship.Genus, genus)
                : engine.Kinship.Find(TaxonRank.Family, place.Family) is { } family
                    ? outcome.Fit?.Predictions.NewLeafUnder(Kinship.Family, family)
                    : outcome.Fit?.Predictions.NewLeaf();
        return Make(
            engine, fit, Next(fit.Middles), Next(fit.Widths),
            RelationFinder.Teachers(engine, fit, place.Genus, place.Family, place.Order, ""));
    }

    private static Estimate Make(
        RelativesEngine engine, FigureFit fit, Normal? middle, Normal? logWidth, Relations relations)
    {
        if (fit.Middles.Problem?.Kind == FitProblemKind.NoVariance && relations.Asked >= FewestValues)
            return new Estimate(fit.Figure, EstimateVerdict.AllAlike, null, relations);
        if (middle is null || relations.Asked < FewestValues)
            return new Estimate(fit.Figure, EstimateVerdict.TooFew, null, relations);
        var range = Range(engine, fit, middle, logWidth?.Mean ?? fit.OnlyLogWidth);
        var verdict = range.Sure.Width > range.Limit ? EstimateVerdict.Disagree : EstimateVerdict.Estimated;
        return new Estimate(fit.Figure, verdict, range, relations);
    }

    private static EstimatedRange Range(RelativesEngine engine, FigureFit fit, Normal middle, double? logWidth)
    {
        var declared = fit.Figure.Declaration;
        double Back(double scaled) => Math.Clamp(
            fit.Scale.From(scaled),
            declared.Plausible.Low ?? double.MinValue, declared.Plausible.High ?? double.MaxValue);
        var half = logWidth is { } log ? Math.Exp(log) / 2 : 0;
        var sure = middle.CentralInterval(Sure);
        var limits = engine.Collection.Store.RelativesDisagree;
        return new EstimatedRange(
            Back(middle.Mean - half), Back(middle.Mean + half), Back(middle.Mean),
            Interval.Between(Back(sure.Low), Back(sure.High)),
            limits.GetValueOrDefault(fit.Figure.Field, declared.DisagreeBeyond));
    }
}

/// <summary>Where in the classification a species belongs that has no entry yet.</summary>
public sealed record NewPlace(string Genus, string Family, string Order);
