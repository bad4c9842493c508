using CareSheets.Quantities;

namespace CareSheets.Pages.Mates;

/// <summary>Makes the two pages that answer for the customer's own tank.</summary>
internal sealed class MatePageMaker(Site site)
{
    public IEnumerable<IPage> Make()
    {
        var tank = new TankForm(Units(DimensionCatalogue.Length), Units(DimensionCatalogue.Volume));
        yield return new TogetherPage(
            Routes.Together, Frame(Routes.Together, "together"), tank, Routes.AllSpecies);
        yield return new FitsPage(
            Routes.FitsMyTank, Frame(Routes.FitsMyTank, "fits"), tank,
            [.. site.Collection.Ranges.Where(r => r.IsAlwaysShown)
                .Select(r => new WaterField(r.Field, RangeRowMaker.LabelOf(r, site.Words), Units(r.Dimension)))],
            site.Collection.Store.Tap is null
                ? ""
                : site.Words.Say("mates.tap_button", ("store", site.Collection.Store.Name)),
            Routes.AllSpecies);
    }

    private PageFrame Frame(string address, string key) =>
        site.Frames.Make(address, site.Words[$"menu.{key}"], site.Words[$"sentence.{key}_description"]);

    private IReadOnlyList<UnitChoice> Units(Dimension dimension)
    {
        UnitSystem[] systems = site.Collection.Store.Units == UnitSystem.US
            ? [UnitSystem.US, UnitSystem.Metric]
            : [UnitSystem.Metric, UnitSystem.US];
        return [.. systems.Select(dimension.For).Distinct().Where(u => u.Symbol.Length > 0)
            .Select(u => new UnitChoice(u.Key, u.Symbol))];
    }
}
