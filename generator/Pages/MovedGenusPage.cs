namespace CareSheets.Pages;

/// <summary>A genus that has no species here any more leads on to those that took them in.</summary>
/// <param name="Genera">With the number of all species that each has here.</param>
public sealed record MovedGenusPage(
    string Address, PageFrame Frame, string FormerName, string Lead, IReadOnlyList<CountedLink> Genera) : IPage
{
    public string Template => "moved-genus";
}
