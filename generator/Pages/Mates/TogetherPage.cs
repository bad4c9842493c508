namespace CareSheets.Pages.Mates;

/// <summary>The page on which a customer puts species and a tank together.</summary>
/// <param name="Join">Lists of who could join, by verdict; the script fills them.</param>
public sealed record TogetherPage(
    string Address, PageFrame Frame, TankForm Tank, IReadOnlyList<AnswerList> Join, string SpeciesHref) : IPage
{
    public string Template => "together";
}
