using CareSheets.Pages.Law;
using CareSheets.Pages.Mates;
using CareSheets.Pages.Outlines;

namespace CareSheets.Pages;

/// <summary>The page of one species, in the order of a customer's questions.</summary>
public sealed record SpeciesPage : IPage
{
    public string Template => "species";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    public required string ScientificName { get; init; }

    public required string Authorship { get; init; }

    public required string VernacularName { get; init; }

    /// <summary>How to say the scientific name, in a sentence.</summary>
    public required string Say { get; init; }

    /// <summary>Further vernacular names in one line, or empty.</summary>
    public required string OtherNames { get; init; }

    public required IReadOnlyList<string> FormerNames { get; init; }

    public required string TradeCodes { get; init; }

    /// <summary>Order, family, genus.</summary>
    public required IReadOnlyList<Link> Classification { get; init; }

    public required Html Prose { get; init; }

    /// <summary>The handful of figures that a visitor looks for first.</summary>
    public required IReadOnlyList<Fact> Glance { get; init; }

    /// <summary>What is in the shop by the record of arrivals; empty when nothing is.</summary>
    public required IReadOnlyList<Fact> Stock { get; init; }

    /// <summary>To the page of new arrivals.</summary>
    public required string ArrivalsHref { get; init; }

    public required SizePicture Picture { get; init; }

    public required IReadOnlyList<Fact> Room { get; init; }

    public required IReadOnlyList<RangeRow> Water { get; init; }

    public required IReadOnlyList<Fact> WaterWords { get; init; }

    public required IReadOnlyList<Fact> Food { get; init; }

    public required IReadOnlyList<Fact> Company { get; init; }

    /// <summary>Other species that it can live with, and those that need care.</summary>
    public required MateLists Mates { get; init; }

    /// <summary>The other species of its genus and of its family.</summary>
    public required IReadOnlyList<SpeciesGroup> Relatives { get; init; }

    public required IReadOnlyList<Link> Countries { get; init; }

    public required IReadOnlyList<Link> Waters { get; init; }

    public required IReadOnlyList<Fact> Place { get; init; }

    /// <summary>How many things it asks for, in a sentence.</summary>
    public required string DemandCount { get; init; }

    /// <summary>Where the limits come from at which something counts, or empty.</summary>
    public required string DemandLimits { get; init; }

    /// <summary>What it asks for, by respect, each with its figures.</summary>
    public required IReadOnlyList<Fact> Demands { get; init; }

    /// <summary>Of this species, the gravest first.</summary>
    public required IReadOnlyList<LatinText> Cautions { get; init; }

    /// <summary>What to mind before all else; nothing where there are no cautions.</summary>
    public LatinText? Gravest => Cautions.Count > 0 ? Cautions[0] : null;

    /// <summary>Cautions that hold for every aquarium.</summary>
    public required IReadOnlyList<LatinText> Everywhere { get; init; }
    /// <summary>What the lists of law say.</summary>
    public required LawLines Law { get; init; }

    /// <summary>Which figures rest on what, in sentences.</summary>
    public required IReadOnlyList<Fact> Evidence { get; init; }

    public required IReadOnlyList<CitationLine> References { get; init; }

    public required string Reviewed { get; init; }

    public required string SheetHref { get; init; }

    public required string CardHref { get; init; }
}

/// <summary>A work of the reference list, ready to print. <c>Href</c> is empty without a DOI.</summary>
public sealed record CitationLine(string Id, string Text, string Href, string Note);
