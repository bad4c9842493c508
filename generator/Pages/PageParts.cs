namespace CareSheets.Pages;

/// <summary>A link with its text; <c>IsLatin</c> for scientific names of genera and species.</summary>
public sealed record Link(string Text, string Href, bool IsLatin = false)
{
    /// <summary>What stands quietly beside it, such as the Latin name of a family; or empty.</summary>
    public string Beside { get; init; } = "";
}

/// <summary>A question answered in a line: a label and a value, with a note where one helps.</summary>
public sealed record Fact(string Label, string Value, string Note = "")
{
    /// <summary>The value as it is printed.</summary>
    public LatinText Said => new(Value);

    /// <summary>The note as it is printed.</summary>
    public LatinText Noted => new(Note);
}

/// <summary>A species in a list: its names and the figures people choose by.</summary>
public sealed record SpeciesRow(
    string ScientificName,
    string VernacularName,
    string Href,
    string Family,
    string Length,
    string Temperature,
    string Acidity)
{
    /// <summary>The family's Latin name where <see cref="Family"/> is that of customers, else empty.</summary>
    public string LatinFamily { get; init; } = "";
}

/// <summary>Species under a heading, such as the genus they share with the page's species.</summary>
public sealed record SpeciesGroup(string Heading, Link? HeadingLink, IReadOnlyList<SpeciesRow> Species);

/// <summary>A taxon or place in a list, with how many species it has here.</summary>
public sealed record CountedLink(string Text, string Href, string Count, bool IsLatin)
{
    /// <summary>As in <see cref="Link.Beside"/>; of an order, its families here.</summary>
    public string Beside { get; init; } = "";
}
