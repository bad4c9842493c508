namespace CareSheets.Pages;

/// <summary>What every page has around its own content.</summary>
/// <param name="Language">BCP 47, for the document.</param>
/// <param name="Title">For the tab; the page's own heading comes with the page.</param>
/// <param name="Root">The way back to the top of the site: empty, or <c>../</c>.</param>
/// <param name="Menu">Main places of the site, the current one marked.</param>
/// <param name="IsListed">Whether search engines should list the page.</param>
public sealed record PageFrame(
    string Language,
    string Title,
    string Description,
    string Root,
    string StoreName,
    string StorePlace,
    string StoreContact,
    IReadOnlyList<MenuLink> Menu,
    bool IsListed)
{
    /// <summary>Whether the page has a form that is sent, which its policy must then allow.</summary>
    public bool HasForm { get; init; }
}

public sealed record MenuLink(string Text, string Href, bool IsCurrent);
