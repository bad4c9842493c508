namespace CareSheets.Pages.Mates;

/// <summary>The page on which a customer puts species and a tank together.</summary>
public sealed record TogetherPage(string Address, PageFrame Frame, TankForm Tank, string SpeciesHref) : IPage
{
    public string Template => "together";
}
