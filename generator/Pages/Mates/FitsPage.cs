namespace CareSheets.Pages.Mates;

/// <summary>The page that asks for a tank and its water and lists what fits.</summary>
/// <param name="Tap">What the button says that fills in the shop's tap, or empty.</param>
/// <param name="Answers">Lists of what fits, nearly and not; the script fills them.</param>
public sealed record FitsPage(
    string Address, PageFrame Frame, TankForm Tank, IReadOnlyList<WaterField> Water, string Tap,
    IReadOnlyList<AnswerList> Answers, string SpeciesHref)
    : IPage
{
    public string Template => "fits-my-tank";
}
