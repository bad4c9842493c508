using CareSheets.Collection;
using CareSheets.Housing;
using CareSheets.Quantities;

namespace CareSheets.Pages.Waters;

/// <summary>Why a species fits a water of the shop or does not, and which blend would do, in words.</summary>
public sealed class HousingSentences(Site site)
{
    private Words Words => site.Words;

    private UnitSystem Units => site.Collection.Store.Units;

    public string NameOf(WaterSource source) => source.Kind switch
    {
        WaterSourceKind.System => source.Water.Name,
        WaterSourceKind.Tap => Words["housing.tap"],
        WaterSourceKind.Pure => Words["housing.pure"],
    };

    public string Verdict(Suitability suitability) => Words[$"housing.{suitability}"];

    /// <summary>What does not fit, then what is not known; empty where all is known and fits.</summary>
    public IEnumerable<string> Reasons(SystemFit fit)
    {
        foreach (var figure in fit.Failing)
            yield return figure.Suggested is { } suggested
                ? Words.Say(
                    "housing.RelativesApart", ("field", Label(figure)), ("suggested", Show(figure, suggested)),
                    ("given", site.Quantities.ShowIn(figure.Given!, Units)))
                : Words.Say(
                    $"housing.{figure.Standing}", ("field", Label(figure)), ("by", By(figure)),
                    ("keep", figure.Keep is { } keep ? site.Quantities.ShowIn(keep, Units) : Words["housing.fresh"]));
        if (fit.Oxygen is { IsMet: false } oxygen)
            yield return Words.Say(
                "housing.oxygen", ("attainable", Digits.Of(oxygen.Attainable.InMilligramsPerLitre)),
                ("need", oxygen.Need), ("limit", Digits.Of(oxygen.Limit.Value.InMilligramsPerLitre)),
                ("source", oxygen.Limit.Source));
        foreach (var figure in fit.Unknown)
            yield return figure.Suggested is { } suggested
                ? Words.Say(
                    "housing.RelativesOnly", ("field", Label(figure)), ("suggested", Show(figure, suggested)))
                : Words.Say($"housing.{figure.Standing}", ("field", Label(figure)));
    }

    public string Blend(BlendOffer offer)
    {
        var text = Words.Say(
            "housing.blend", ("percent", Digits.Fixed(offer.Chosen.InPercent, 0)), ("one", NameOf(offer.One)),
            ("rest", Digits.Fixed(100 - offer.Chosen.InPercent, 0)), ("other", NameOf(offer.Other)),
            ("low", Digits.Fixed(Math.Ceiling(offer.OfOne.Min!.Value.InPercent), 0)),
            ("high", Digits.Fixed(Math.Floor(offer.OfOne.Max!.Value.InPercent), 0)));
        if (offer.PH is not { } pH)
            return $"{text} {Words["housing.blend_no_ph"]}";
        var span = new WaterText(Words).Span(pH);
        return $"{text} {Words.Say("housing.blend_ph", ("ph", span))}";
    }

    private string Label(FigureInWater figure) => RangeRowMaker.LabelOf(figure.Declaration, Words);

    private string Show(FigureInWater figure, SuggestedRange suggested) => site.Quantities.Computed(
        figure.Declaration.Dimension, suggested.Low, suggested.High, Rounding.Inward, Units).First;

    /// <summary>In the shop's units, rounded up so that it never looks like nothing.</summary>
    private string By(FigureInWater figure)
    {
        var dimension = DimensionCatalogue.DifferenceOf(figure.Declaration.Dimension);
        return double.IsFinite(figure.By)
            ? site.Quantities.Computed(
                dimension, figure.By, figure.By, Rounding.Upward, Units).First
            : "";
    }
}
