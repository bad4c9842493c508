namespace CareSheets.Pages.Stock;

/// <summary>
/// For whoever presents an arrival: in which order, how to say the names, what to tell and to warn of.
/// </summary>
public sealed record TalkingNotes(
    string Address, PageFrame Frame, string Paper, string Heading, string Lead, IReadOnlyList<TalkedSpecies> Species,
    string PageHref) : IPage
{
    public string Template => "talking-notes";
}

/// <param name="Say">How to say the scientific name; empty where nobody knows.</param>
/// <param name="Stock">How many, from where, and from when they are sold.</param>
public sealed record TalkedSpecies(
    string Place, string VernacularName, string ScientificName, string Say, string Stock,
    IReadOnlyList<Telling> Tellings, IReadOnlyList<LatinText> Warnings);

/// <summary>Something worth telling, and the figure that it rests on.</summary>
public sealed record Telling(string Text, string Figure);
