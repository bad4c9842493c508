using System.Globalization;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>What the engine found, as diagnostics at their lines with each near relative's line beside them.</summary>
public static class OutlierText
{
    private const int MostRelatives = 5;

    /// <summary>Flagged values that nobody has accepted, and acceptances that are no longer right.</summary>
    public static IEnumerable<Diagnostic> Describe(RelativesEngine engine) =>
        engine.Outliers.Where(o => o.Accepted is null).Select(Describe)
            .Concat(engine.Collection.Entries.SelectMany(e => e.Accepted.Select(a => Unused(engine, e, a)))
                .OfType<Diagnostic>());

    /// <summary>Flagged values that a writer has accepted, with the reason.</summary>
    public static IEnumerable<AcceptedDiagnostic> Accepted(RelativesEngine engine) =>
        engine.Outliers.Where(o => o.Accepted is not null)
            .Select(o => new AcceptedDiagnostic(Describe(o), o.Accepted!.Reason));

    private static Diagnostic Describe(Outlier outlier)
    {
        var unit = outlier.Stated.Value.Unit;
        (string, string)[] values =
        [
            ("label", outlier.Figure.Declaration.Label),
            ("value", outlier.Stated.Value.Text),
            ("low", Number(unit.FromCanonical(outlier.ExpectedLow))),
            ("high", Number(unit.FromCanonical(outlier.ExpectedHigh))),
            ("unit", unit.Symbol.Length == 0 ? "" : " " + unit.Symbol),
            ("relatives", SaidOf(outlier)),
            ("field", outlier.Figure.Field),
            ("beside", outlier.Beside is { } other ? $", beside {Named(other)}," : ""),
            ("first", First(outlier)),
            ("look", outlier.Beside is null ? "Look again. " : First(outlier)),
            ("advice", FewRelatives.Advice(outlier)),
        ];
        var code = !outlier.IsSure ? RelativesCodes.StandsOut
            : outlier.Slip is null ? RelativesCodes.Apart
            : RelativesCodes.ApartBySlip;
        return Diagnostic.Of(code, outlier.Stated.Span, [.. values, ("slip", SlipText(outlier))])
            .At(outlier.Figure.Path)
            .With([.. Beside(outlier), .. outlier.Relations.Nearest.Take(MostRelatives).Select(r => new RelatedSpan(
                r.Stated.Span, $"{r.Entry.ScientificName.Value}: {r.Stated.Value.Text}"))]);
    }

    private static IEnumerable<RelatedSpan> Beside(Outlier outlier) => outlier.Beside is { } other
        ? [new RelatedSpan(other.Stated.Span, $"beside it: {Named(other)}")] : [];

    private static string First(Outlier outlier) =>
        outlier.Beside is { } other ? $"Look at {Named(other)} first: without it this one fits. " : "";

    private static string Named(BesideFigure other)
    {
        var label = other.Figure.Declaration.Label;
        return $"{(label == "pH" ? label : label.ToLowerInvariant())} {other.Stated.Value.Text}";
    }

    private static string SaidOf(Outlier outlier)
    {
        var (entry, count) = (outlier.Entry, outlier.Relations.Nearest.Count);
        var number = count.ToString(CultureInfo.InvariantCulture);
        return outlier.Relations.Rank switch
        {
            Collection.TaxonRank.Genus => $"the other {entry.Genus} ({number})",
            Collection.TaxonRank.Family => $"its family {entry.Family.Value} ({number})",
            Collection.TaxonRank.Order => $"its order {entry.Order.Value} ({number})",
            null => $"the collection ({outlier.Relations.Asked.ToString(CultureInfo.InvariantCulture)})",
        };
    }

    private static string SlipText(Outlier outlier)
    {
        if (outlier.Slip is not { } slip)
            return "";
        var unit = outlier.Stated.Value.Unit;
        var (low, high) = (Number(unit.FromCanonical(slip.MeantLow)), Number(unit.FromCanonical(slip.MeantHigh)));
        var meant = (low == high ? low : $"{low}–{high}") + (unit.Symbol.Length == 0 ? "" : " " + unit.Symbol);
        return slip.Kind switch
        {
            SlipKind.FahrenheitForCelsius => $"it may be Fahrenheit; that would be {meant}",
            SlipKind.CelsiusForFahrenheit => $"it may be Celsius; that would be {meant}",
            SlipKind.InchesForCentimetres => $"it may be inches; that would be {meant}",
            SlipKind.CentimetresForInches => $"it may be centimetres; that would be {meant}",
            SlipKind.PpmForDegrees => $"it may be ppm; that would be {meant}",
            SlipKind.DegreesForPpm => $"it may be German degrees; that would be {meant}",
            SlipKind.StandardForTotalLength => $"it may be the standard length; in total that would be about {meant}",
            SlipKind.DecimalLost => $"a decimal point may be missing: {meant}",
            SlipKind.DecimalTooMany => $"a digit may be missing: {meant}",
            SlipKind.ExchangedWith => $"it may be exchanged with that of {slip.Other}: {meant}",
        };
    }

    private static Diagnostic? Unused(RelativesEngine engine, Entry entry, Acceptance accepted)
    {
        var used = engine.Outliers.Any(o => o.Accepted == accepted);
        if (used)
            return null;
        var figures = engine.Figures.Where(f => f.IsAudited).Select(f => f.Field).ToList();
        if (!figures.Contains(accepted.Figure.Value))
            return Diagnostic.Of(RelativesCodes.AcceptsNoFigure, accepted.Figure.Span,
                ("name", accepted.Figure.Value),
                ("suggestion", CollectionLinker.Suggest(accepted.Figure.Value, figures)),
                ("figures", string.Join(", ", figures)));
        var changed = engine.Outliers.Any(o => o.Entry == entry && o.Figure.Field == accepted.Figure.Value);
        return Diagnostic.Of(
            changed ? RelativesCodes.AcceptedAnother : RelativesCodes.AcceptsNothing, accepted.Value.Span,
            ("label", accepted.Figure.Value), ("value", accepted.Value.Value));
    }

    private static string Number(double value) => value.ToString(
        Math.Abs(value) >= 20 ? "0" : "0.#", CultureInfo.InvariantCulture);
}
