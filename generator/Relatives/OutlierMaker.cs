using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>Puts together what a writer needs to judge a flagged value.</summary>
internal static class OutlierMaker
{
    /// <summary>Standard deviations within which a value fits well enough (our choice).</summary>
    private const double Fits = 1.5;

    public static Outlier Make(RelativesEngine engine, int figure, int index, bool isSure)
    {
        var fit = engine.Fits[figure];
        var entry = engine.Kinship.Entries[index];
        var stated = fit.Figure.Own(entry)!;
        var foretold = engine.Foretold(figure, index)!;
        var within = foretold.CentralInterval(0.95);
        return new Outlier(
            entry, fit.Figure, stated, isSure,
            foretold.Z(fit.Values[index]!.Value.Middle),
            fit.Scale.From(foretold.Mean), fit.Scale.From(within.Low), fit.Scale.From(within.High),
            RelationFinder.Find(engine, fit, entry),
            SlipFinder.Find(engine, figure, index),
            AcceptanceOf(entry, fit.Figure, stated.Value))
        {
            Beside = Beside(engine, figure, index),
            Middle = fit.Scale.From(fit.Values[index]!.Value.Middle),
        };
    }

    /// <summary>The one of the entry's other figures without which the value fits best, where it then fits.</summary>
    private static BesideFigure? Beside(RelativesEngine engine, int figure, int index)
    {
        var (entry, middle) = (engine.Kinship.Entries[index], engine.Fits[figure].Values[index]!.Value.Middle);
        return engine.Fits.Index()
            .Where(other => other.Index != figure && other.Item.Values[index] is not null)
            .Select(other => (other.Item.Figure, Off: Off(other.Index)))
            .Where(other => other.Off <= Fits).OrderBy(other => other.Off)
            .Select(other => new BesideFigure(other.Figure, other.Figure.Own(entry)!)).FirstOrDefault();

        double? Off(int other) => engine.Others!.ForetoldWithout(other, figure, index) is { } foretold
            ? Math.Abs(foretold.Z(middle)) : null;
    }

    /// <summary>The writer's word on a figure, if it was given for the value that stands there now.</summary>
    public static Acceptance? AcceptanceOf(Entry entry, ComparedFigure figure, StatedRange stated) =>
        entry.Accepted.FirstOrDefault(a => a.Figure.Value == figure.Field && IsSame(a, stated));

    /// <summary>The value as it was accepted, whatever the dash or the spaces.</summary>
    private static bool IsSame(Acceptance accepted, StatedRange stated) =>
        QuantityText.Parse(accepted.Value.Value, stated.Dimension, stated.Basis is not null) is { Ok: true } parsed &&
        parsed.Value.Text == stated.Text;
}
