namespace CareSheets.Pages.Mates;

/// <summary>The page on which a customer puts species and a tank together.</summary>
public sealed record TogetherPage(string Address, PageFrame Frame, TankForm Tank, string SpeciesHref) : IPage
{
    public string Template => "together";
}

/// <summary>The page that asks for a tank and its water and lists what fits.</summary>
/// <param name="Tap">What the button says that fills in the shop's tap, or empty.</param>
public sealed record FitsPage(
    string Address, PageFrame Frame, TankForm Tank, IReadOnlyList<WaterField> Water, string Tap, string SpeciesHref) : IPage
{
    public string Template => "fits-my-tank";
}

/// <summary>Units in which a tank may be given, the shop's own system first.</summary>
public sealed record TankForm(IReadOnlyList<UnitChoice> Lengths, IReadOnlyList<UnitChoice> Volumes);

/// <summary>A figure of the water that a customer may know.</summary>
public sealed record WaterField(string Key, string Label, IReadOnlyList<UnitChoice> Units);

public sealed record UnitChoice(string Key, string Symbol);
