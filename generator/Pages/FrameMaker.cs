namespace CareSheets.Pages;

/// <summary>Makes what stands around a page: its title, its menu, the shop's line.</summary>
public sealed class FrameMaker(Site site)
{
    private static readonly IReadOnlyList<(string Key, string Address)> Menu =
    [
        ("menu.home", Routes.Home), ("menu.arrivals", Routes.NewArrivals), ("menu.species", Routes.AllSpecies),
        ("menu.families", Routes.Families),
        ("menu.origins", Routes.Origins), ("menu.fits", Routes.FitsMyTank), ("menu.together", Routes.Together),
        ("menu.water", Routes.WaterSums), ("menu.words", Routes.Glossary), ("menu.about", Routes.About),
    ];

    public PageFrame Make(string address, string title, string description, bool isListed = true)
    {
        var (words, store) = (site.Words, site.Collection.Store);
        return new PageFrame(
            words.Language,
            address == Routes.Home ? store.Name : words.Say("sentence.title", ("page", title), ("store", store.Name)),
            description,
            Routes.Root(address),
            store.Name,
            store.Place,
            store.Contact ?? "",
            [.. Menu.Select(m => new MenuLink(words[m.Key], Routes.Between(address, m.Address), m.Address == address))],
            isListed);
    }
}
