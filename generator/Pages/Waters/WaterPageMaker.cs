namespace CareSheets.Pages.Waters;

/// <summary>Makes the page of sums on water.</summary>
internal sealed class WaterPageMaker(Site site)
{
    private Words Words => site.Words;

    public WaterPage Make()
    {
        var (inputs, tables) = (new WaterInputs(site), new WaterTables(site));
        return new WaterPage(
            Routes.WaterSums, site.Frames.Make(Routes.WaterSums, Words["menu.water"], Words["water_page.description"]),
            Words["water_page.title"], Words["water_page.lead"], Words["water_page.no_script"],
            [Words["water_page.caution_sum"], Words["water_page.caution_kit"], Words["water_page.caution_ask"]],
            [.. WaterInputs.Names.Select(name => new WaterSum(
                name, Words[$"water_page.{name}"], Words[$"water_page.{name}_lead"],
                name is "blend" or "change" ? Words["water.fresh_caution"] : "", Words["water_page.answer"],
                inputs.Of(name), tables.Of(name))
            {
                Behind = name == "bag" ? Words["water.bag_why"] : "",
            })],
            [
                Words["water_page.source_ammonia"], Words["water_page.source_carbon"],
                Words["water_page.source_oxygen"], Words["water_page.source_hardness"],
            ])
        {
            SourcesHeading = Words["water_page.sources"],
        };
    }
}
