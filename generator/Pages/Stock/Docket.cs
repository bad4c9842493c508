namespace CareSheets.Pages.Stock;

/// <summary>For staff: an arrival from its boxes to its tanks, in the order in which bags are opened.</summary>
public sealed record Docket : IPage
{
    public string Template => "docket";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    /// <summary><c>a4</c> or <c>letter</c>, a class of the theme.</summary>
    public required string Paper { get; init; }

    public required string Heading { get; init; }

    /// <summary>Supplier, list, times, counts.</summary>
    public required IReadOnlyList<Fact> Facts { get; init; }

    /// <summary>What to do with each measured bag before it is opened.</summary>
    public required IReadOnlyList<BagBox> Bags { get; init; }

    /// <summary>What holds for every bag, measured or not.</summary>
    public required string BagsNote { get; init; }

    public required IReadOnlyList<DocketLine> Lines { get; init; }

    /// <summary>How the order was found, and what it is worth.</summary>
    public required string OrderNote { get; init; }

    /// <summary>When each system of this arrival is released.</summary>
    public required IReadOnlyList<Fact> Systems { get; init; }

    public required string SystemsNote { get; init; }

    /// <summary>What holds for hands and plugs at every aquarium.</summary>
    public required string Everywhere { get; init; }

    public required string PageHref { get; init; }
}

/// <summary>A measured bag: its figures, and what follows from them.</summary>
public sealed record BagBox(
    string Heading, IReadOnlyList<Fact> Facts, string Advice, IReadOnlyList<string> Reasons);

/// <summary>A line of the packing list on the docket.</summary>
/// <param name="Place">Which bag it is to open, counted from 1.</param>
/// <param name="Said">The supplier's own words.</param>
/// <param name="VernacularName">The entry's; for a line that nobody knows, the theme's words for that.</param>
/// <param name="ScientificName">Empty while nobody knows it.</param>
/// <param name="Alarm">What stands out: a regulated name, losses; empty when nothing does.</param>
/// <param name="Waters">Each system of the shop: whether it suits, and why not.</param>
/// <param name="Alive">The count, or empty where it is to be filled in by hand.</param>
public sealed record DocketLine(
    string Place, string Said, string VernacularName, string ScientificName, IReadOnlyList<LatinText> Alarm,
    string Promised, string Alive, IReadOnlyList<Fact> Facts, IReadOnlyList<Fact> Waters,
    IReadOnlyList<LatinText> Cautions);
