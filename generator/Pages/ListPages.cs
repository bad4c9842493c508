namespace CareSheets.Pages;

/// <summary>All species in one list.</summary>
public sealed record SpeciesListPage(
    string Address, PageFrame Frame, string Count, IReadOnlyList<SpeciesRow> Species) : IPage
{
    public string Template => "species-list";
}

/// <summary>All taxa of one rank, or of several under headings.</summary>
public sealed record TaxaPage(
    string Address, PageFrame Frame, string Heading, string Lead, IReadOnlyList<TaxaGroup> Groups,
    IReadOnlyList<Link> OtherRanks) : IPage
{
    public string Template => "taxa";
}

/// <summary>Taxa that share a parent, such as the families of an order.</summary>
public sealed record TaxaGroup(Link Parent, IReadOnlyList<CountedLink> Taxa);

/// <summary>One order, family or genus with its species.</summary>
public sealed record TaxonPage(
    string Address, PageFrame Frame, string Rank, string Name, bool IsLatin, Link? Parent,
    string Count, IReadOnlyList<SpeciesGroup> Groups) : IPage
{
    public string Template => "taxon";

    /// <summary>The Latin name where <see cref="Name"/> is that of customers, else empty.</summary>
    public string LatinName { get; init; } = "";

    /// <summary>Further names of customers in a line, or empty.</summary>
    public string OtherNames { get; init; } = "";

    /// <summary>What the fishes of the family share, or empty.</summary>
    public string Text { get; init; } = "";

    /// <summary>What the text rests on, or empty.</summary>
    public string Evidence { get; init; } = "";
}

/// <summary>All countries, by the regions they lie in, and all waters.</summary>
public sealed record OriginsPage(
    string Address, PageFrame Frame, IReadOnlyList<OriginRegion> Regions, IReadOnlyList<CountedLink> Waters) : IPage
{
    public string Template => "origins";
}

/// <summary>A part of the Earth with its countries; without a name where a country lies in none.</summary>
public sealed record OriginRegion(string Name, IReadOnlyList<CountedLink> Countries);

/// <summary>One country or one water with the species that come from it.</summary>
public sealed record OriginPage(
    string Address, PageFrame Frame, string Kind, string Name, string Count, IReadOnlyList<SpeciesRow> Species) : IPage
{
    public string Template => "origin";
}

/// <summary>Words explained.</summary>
public sealed record GlossaryPage(string Address, PageFrame Frame, IReadOnlyList<GlossaryLine> Terms) : IPage
{
    public string Template => "glossary";
}

public sealed record GlossaryLine(string Id, string Term, string Meaning, IReadOnlyList<Link> See);

/// <summary>What the sheets are, who publishes them, and what the marks of evidence mean.</summary>
public sealed record AboutPage(
    string Address, PageFrame Frame, string StoreAbout, IReadOnlyList<Fact> Counts, IReadOnlyList<Fact> Marks,
    IReadOnlyList<Fact> Kinds) : IPage
{
    public string Template => "about";

    /// <summary>To the page that tells how well estimates work here.</summary>
    public required Link Record { get; init; }
}

/// <summary>All papers to print, for staff.</summary>
public sealed record PapersPage(string Address, PageFrame Frame, IReadOnlyList<PaperLine> Papers) : IPage
{
    public string Template => "papers";

    /// <summary>To the values that relatives do not agree with.</summary>
    public required Link Flagged { get; init; }

    /// <summary>To what the figures rest on.</summary>
    public required Link Evidence { get; init; }
    /// <summary>Docket and notes of each arrival, the newest first.</summary>
    public required IReadOnlyList<ArrivalPapers> Arrivals { get; init; }

    /// <summary>To the shop's waters that each species can live in.</summary>
    public required Link Where { get; init; }
}

public sealed record ArrivalPapers(string Arrival, string DocketHref, string NotesHref);

public sealed record PaperLine(string ScientificName, string VernacularName, string SheetHref, string CardHref);

/// <summary>A former name, which leads to today's.</summary>
public sealed record MovedPage(
    string Address, PageFrame Frame, string FormerName, string ScientificName, string VernacularName,
    string Href) : IPage
{
    public string Template => "moved";
}
