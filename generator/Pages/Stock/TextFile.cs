namespace CareSheets.Pages.Stock;

/// <summary>A file of the site that is not a page, ready to write.</summary>
public sealed record TextFile(string Address, string Text);
