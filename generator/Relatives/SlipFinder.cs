using CareSheets.Quantities;

namespace CareSheets.Relatives;

/// <summary>
/// Tries on a flagged value what slips of the pen do, and names the one after which it fits best.
/// A slip is named only when the value that it gives lies well within what relatives foretell.
/// </summary>
internal static class SlipFinder
{
    /// <summary>Standard deviations within which a mended value fits well enough to be named.</summary>
    private const double Fits = 1.5;

    /// <summary>Standard deviations from which a value may be the other half of an exchange.</summary>
    private const double Odd = 3;

    public static LikelySlip? Find(RelativesEngine engine, int figure, int index)
    {
        var fit = engine.Fits[figure];
        var foretold = engine.Foretold(figure, index)!;
        var stated = fit.Figure.Own(engine.Kinship.Entries[index])!.Value;
        var low = stated.Low ?? 0;
        var high = stated.High ?? low;
        return Undone(stated, low, high)
            .Concat(Exchanged(engine, figure, index))
            .Where(s => fit.Figure.Declaration.Dimension.IsPossible(s.MeantLow) && IsPlausible(fit, s))
            .Select(s => (Slip: s, Off: Math.Abs(foretold.Z(fit.Scale.Of(s.MeantLow, s.MeantHigh).Middle))))
            .Where(s => s.Off <= Fits)
            .OrderBy(s => s.Slip.Kind == SlipKind.ExchangedWith).ThenBy(s => s.Off)
            .Select(s => s.Slip)
            .FirstOrDefault();
    }

    private static bool IsPlausible(FigureFit fit, LikelySlip slip) =>
        slip.MeantLow >= fit.Figure.Declaration.Plausible.Low &&
        slip.MeantHigh <= fit.Figure.Declaration.Plausible.High;

    private static IEnumerable<LikelySlip> Undone(StatedRange stated, double low, double high)
    {
        LikelySlip By(SlipKind kind, Func<double, double> undo) => new(kind, undo(low), undo(high), "");
        if (stated.Dimension == DimensionCatalogue.Temperature)
        {
            yield return By(SlipKind.FahrenheitForCelsius, c => (c - 32) / 1.8);
            yield return By(SlipKind.CelsiusForFahrenheit, c => c * 1.8 + 32);
        }
        if (stated.Dimension == DimensionCatalogue.Length)
        {
            yield return By(SlipKind.InchesForCentimetres, v => v * 2.54);
            yield return By(SlipKind.CentimetresForInches, v => v / 2.54);
            yield return By(SlipKind.StandardForTotalLength, v => v * 1.2);
        }
        if (stated.Dimension == DimensionCatalogue.GeneralHardness)
        {
            yield return By(SlipKind.PpmForDegrees, v => v / PpmInADegree);
            yield return By(SlipKind.DegreesForPpm, v => v * PpmInADegree);
        }
        yield return By(SlipKind.DecimalLost, v => v / 10);
        yield return By(SlipKind.DecimalTooMany, v => v * 10);
    }

    /// <summary>10 mg CaO as CaCO3: 10 * 100.0869 / 56.0774 (definition of the German degree).</summary>
    private const double PpmInADegree = 17.848;

    /// <summary>Another entry's value that fits here, while this one's fits there.</summary>
    private static IEnumerable<LikelySlip> Exchanged(RelativesEngine engine, int figure, int index)
    {
        var fit = engine.Fits[figure];
        var own = fit.Values[index]!.Value.Middle;
        for (var other = 0; other < fit.Values.Count; other++)
        {
            if (other == index || fit.Values[other] is not { } value ||
                engine.Foretold(figure, other) is not { } foretold)
                continue;
            var doesNotFitThere = Math.Abs(foretold.Z(value.Middle)) > Odd;
            if (!doesNotFitThere || Math.Abs(foretold.Z(own)) > Fits)
                continue;
            var stated = fit.Figure.Own(engine.Kinship.Entries[other])!.Value;
            yield return new LikelySlip(
                SlipKind.ExchangedWith, stated.Low ?? 0, stated.High ?? 0,
                engine.Kinship.Entries[other].ScientificName.Value.ToString());
        }
    }
}
