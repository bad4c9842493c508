namespace CareSheets.Pages.Stock;

/// <summary>For customers: what has come in lately and what is on its way.</summary>
public sealed record NewArrivalsPage(
    string Address, PageFrame Frame, string Heading, string Lead,
    IReadOnlyList<ArrivalGroup> Here, IReadOnlyList<ArrivalGroup> Coming) : IPage
{
    public string Template => "new-arrivals";

    public required string FeedHref { get; init; }

    /// <summary>Said where nothing has come in lately, else empty.</summary>
    public required string Nothing { get; init; }
}

/// <summary>The batches of one arrival, under its date.</summary>
public sealed record ArrivalGroup(string Id, string Heading, IReadOnlyList<BatchLine> Batches);

/// <summary>A batch as customers see it; what is not known is empty.</summary>
/// <param name="Kind">Strain, size and sex.</param>
/// <param name="Source">Caught or bred, and where.</param>
public sealed record BatchLine(
    string VernacularName, Link Species, string Kind, string Source, string Count, string Release, string Price);
