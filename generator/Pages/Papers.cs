namespace CareSheets.Pages;

/// <summary>The home sheet given to the buyer: one page of A4 or Letter.</summary>
public sealed record HomeSheet : IPage
{
    public string Template => "home-sheet";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    /// <summary><c>a4</c> or <c>letter</c>, a class of the theme.</summary>
    public required string Paper { get; init; }

    public required string ScientificName { get; init; }

    public required string Authorship { get; init; }

    public required string VernacularName { get; init; }

    public required string Classification { get; init; }

    public required IReadOnlyList<Fact> Room { get; init; }

    public required IReadOnlyList<RangeRow> Water { get; init; }

    public required IReadOnlyList<Fact> Living { get; init; }

    /// <summary>As many paragraphs as the page holds; the web page has all.</summary>
    public required Html Prose { get; init; }

    public bool HasProse => Prose.Markup.Length > 0;

    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Cautions that hold for every aquarium, in few words.</summary>
    public required IReadOnlyList<string> Everywhere { get; init; }
    /// <summary>Routine, settling in and costs.</summary>
    public required IReadOnlyList<Fact> Advice { get; init; }

    /// <summary>The shop's licence to sell animals, or empty.</summary>
    public required string Licence { get; init; }

    /// <summary>What the sheet tells of, never that it is lawful.</summary>
    public required string Covers { get; init; }

    /// <summary>What the lists of law say, in a few words.</summary>
    public required string Law { get; init; }

    public required string EvidenceLine { get; init; }

    public required string Reviewed { get; init; }

    /// <summary>Where the species' page is on the web.</summary>
    public required string PageAddress { get; init; }

    public required string PageHref { get; init; }
}

/// <summary>The card on the tank front, A6: readable from a step away.</summary>
public sealed record TankCard : IPage
{
    public string Template => "tank-card";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    public required string ScientificName { get; init; }

    public required string VernacularName { get; init; }

    public required string Origin { get; init; }

    public required IReadOnlyList<Fact> Facts { get; init; }

    public required IReadOnlyList<RangeRow> Water { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    public required string Reviewed { get; init; }

    public required string PageHref { get; init; }
}
