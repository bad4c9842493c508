using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>Why a species does not simply fit a tank or its water, as sentences of the theme.</summary>
public sealed class FitSentences(Site site)
{
    private readonly MateSentences _sentences = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);

    public string Of(Tankmate mate, FitReason reason) => _sentences.Fill(
        $"browser.{KeyOf(reason.Limits, reason.State)}",
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

    /// <summary>The sentence for a figure that lies so among such limits, which the scripts say too.</summary>
    internal static string KeyOf(Limits limits, LimitState state) => limits.Basis switch
    {
        LimitBasis.Nobody => "fit_unknown",
        LimitBasis.Law => "fit_law",
        LimitBasis.FreshWater => "fit_fresh",
        LimitBasis.Relatives => state switch
        {
            LimitState.NotGiven => "fit_unknown",
            LimitState.Within => "fit_relatives",
            LimitState.Near or LimitState.Beyond => "fit_relatives_apart",
        },
        LimitBasis.Sheet when state != LimitState.NotGiven => IsSize(limits.Dimension) ? "fit_size" : "fit_water",
        LimitBasis.Sheet => IsSize(limits.Dimension) ? "fit_not_given" : "fit_salt",
    };

    private static bool IsSize(Dimension dimension) =>
        dimension == DimensionCatalogue.Length || dimension == DimensionCatalogue.Volume;
}
