using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>What relatives say of one figure of one species, beside what its entry states.</summary>
/// <param name="Stated">From evidence of its own; else nothing.</param>
/// <param name="Deviate">
/// How many standard deviations the stated middle lies above what relatives foretell; nothing where one of
/// them is missing.
/// </param>
public sealed record SpeciesAnswer(
    ComparedFigure Figure, Sourced<StatedRange>? Stated, Estimate Estimate, double? Deviate)
{
    /// <summary>Figure by figure; one that neither the entry nor any relative states is left out.</summary>
    public static IReadOnlyList<SpeciesAnswer> Of(RelativesEngine engine, Entry entry) =>
    [
        .. engine.Fits.Index().Select(f => Of(engine, entry, f.Index))
            .Where(a => a.Stated is not null || a.Estimate.Relations.Asked > 0),
    ];

    private static SpeciesAnswer Of(RelativesEngine engine, Entry entry, int figure)
    {
        var fit = engine.Fits[figure];
        var index = engine.Kinship.IndexOf(entry);
        return new SpeciesAnswer(
            fit.Figure, fit.Figure.Own(entry), EstimateMaker.Make(engine, entry, fit.Figure.Field)!,
            fit.Values[index] is { } value ? engine.Foretold(figure, index)?.Z(value.Middle) : null);
    }
}
