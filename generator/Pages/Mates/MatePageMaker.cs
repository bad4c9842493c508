using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates.Aspects;

namespace CareSheets.Pages.Mates;

/// <summary>Makes the two pages that answer for the customer's own tank.</summary>
internal sealed class MatePageMaker(Site site)
{
    public IEnumerable<IPage> Make()
    {
        var words = site.Words;
        var tank = new TankForm(
            new UnitSelect("tank-side-unit", words["mates.unit"], Units(DimensionCatalogue.Length)),
            new UnitSelect("tank-volume-unit", words["mates.unit"], Units(DimensionCatalogue.Volume)));
        yield return new TogetherPage(
            Routes.Together,
            site.Frames.Make(Routes.Together, words["menu.together"], words["sentence.together_description"]),
            tank, Lists("join", ("suits", 0), ("care", 1), ("apart", 2)), Routes.AllSpecies);
        yield return new FitsPage(
            Routes.FitsMyTank,
            site.Frames.Make(Routes.FitsMyTank, words["menu.fits"], words["sentence.fits_description"]),
            tank, [.. site.Collection.Ranges.Where(WaterAspect.IsNeeded).Select(Field)], Tap(),
            Lists("fit", ("fits", 0), ("nearly", 1), ("not_known", 3), ("fits_not", 2)), Routes.AllSpecies);
    }

    private string Tap() => site.Collection.Store.Tap is null
        ? ""
        : site.Words.Say("mates.tap_button", ("store", site.Collection.Store.Name));

    private WaterField Field(CareRangeDeclaration range)
    {
        var (label, units) = (RangeRowMaker.LabelOf(range, site.Words), Units(range.Dimension));
        var unit = site.Words.Say("mates.unit_of", ("field", label));
        return new WaterField(
            $"water-{range.Field}", range.Field, label,
            units.Count == 0 ? null : new UnitSelect($"unit-{range.Field}", unit, units),
            range.Dimension == DimensionCatalogue.Salinity ? "0" : "");
    }

    private IReadOnlyList<AnswerList> Lists(string id, params (string Word, int Sign)[] lists) =>
        [.. lists.Select((l, i) => new AnswerList($"{id}-{i}", site.Words[$"browser.{l.Word}"], $"{l.Sign}"))];

    private IReadOnlyList<UnitChoice> Units(Dimension dimension)
    {
        UnitSystem[] systems = site.Collection.Store.Units == UnitSystem.US
            ? [UnitSystem.US, UnitSystem.Metric]
            : [UnitSystem.Metric, UnitSystem.US];
        return [.. systems.Select(dimension.For).Distinct().Where(u => u.Symbol.Length > 0)
            .Select(u => new UnitChoice(u.Key, u.Symbol))];
    }
}
