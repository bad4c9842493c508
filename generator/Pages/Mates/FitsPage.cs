namespace CareSheets.Pages.Mates;

/// <summary>The page that asks for a tank and its water and lists what fits.</summary>
/// <param name="Tap">What the button says that fills in the shop's tap, or empty.</param>
public sealed record FitsPage(
    string Address, PageFrame Frame, TankForm Tank, IReadOnlyList<WaterField> Water, string Tap, string SpeciesHref)
    : IPage
{
    public string Template => "fits-my-tank";
}
