namespace CareSheets.Pages;

/// <summary>The first page of the site, in the order of what somebody in the shop wants first.</summary>
public sealed record HomePage(
    string Address, PageFrame Frame, string Heading, string Lead, string About,
    IReadOnlyList<CountedLink> Families, IReadOnlyList<SpeciesRow> Latest) : IPage
{
    public string Template => "home";

    /// <summary>To the list of all species, which takes what was typed.</summary>
    public required Link Search { get; init; }

    /// <summary>What came in last and what is expected next.</summary>
    public required IReadOnlyList<HomeArrival> Arrivals { get; init; }

    /// <summary>Said where nothing has come in lately, else empty.</summary>
    public required string Nothing { get; init; }

    public required Link AllArrivals { get; init; }

    /// <summary>The pages that answer for the customer's own tank, each with what it takes and tells.</summary>
    public required IReadOnlyList<HomeQuestion> Questions { get; init; }

    public required Link AboutPage { get; init; }
}

/// <summary>The first batches of an arrival, under its date.</summary>
/// <param name="More">How many others there are, or empty.</param>
public sealed record HomeArrival(string Heading, IReadOnlyList<BatchDay> Batches, string More);

/// <summary>A batch with the day from which it is sold.</summary>
public sealed record BatchDay(Link Species, string ScientificName, string Told);

public sealed record HomeQuestion(Link Page, string Told);
