using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>Why a species does not simply fit a tank or its water, as sentences of the theme.</summary>
public sealed class FitSentences(Site site)
{
    private readonly MateSentences _sentences = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);

    public string Of(Tankmate mate, FitReason reason) => _sentences.Fill($"browser.fit_{KeyOf(reason)}",
    [
        ("name", _sentences.NameOf(mate)),
        ("field", _sentences.FieldName(reason.Limits.Field)),
        ("needs", Need(reason.Limits, _figures)),
        ("given", reason.Figure is { } figure
            ? _figures.Show(reason.Limits.Dimension, Stretch.Exactly(figure), Rounding.Nearest) : ""),
    ]);

    /// <summary>The limits in words: sizes are rounded up, ranges inward.</summary>
    internal static string Need(Limits limits, StretchText figures) => figures.Show(
        limits.Dimension,
        limits.Fits is { High: double.PositiveInfinity, Low: var least } && IsSize(limits.Dimension)
            ? Stretch.Exactly(least) : limits.Fits,
        IsSize(limits.Dimension) ? Rounding.Upward : Rounding.Inward);

    private static bool IsSize(Dimension dimension) =>
        dimension == DimensionCatalogue.Length || dimension == DimensionCatalogue.Volume;

    private static string KeyOf(FitReason reason) =>
        reason.Limits.Fits is null ? "unknown"
        : reason.Figure is null ? "not_given"
        : IsSize(reason.Limits.Dimension) ? "size" : "water";
}
