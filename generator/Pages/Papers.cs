using CareSheets.Species;

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

    /// <summary>As many paragraphs as the page holds.</summary>
    public required IReadOnlyList<Html> Prose { get; init; }

    /// <summary>Whether paragraphs are left out, which the page on the web has.</summary>
    public required bool IsShortened { get; init; }

    /// <summary>Whether all that may not be left out fits on one page.</summary>
    public required bool IsOnePage { get; init; }

    /// <summary>Any of it, or that it stands elsewhere.</summary>
    public bool HasProse => Prose.Count > 0 || IsShortened;

    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The cautions as they are printed.</summary>
    public IReadOnlyList<LatinText> ToldCautions => [.. Cautions.Select(c => new LatinText(c))];

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

    /// <summary>The law as it is printed.</summary>
    public LatinText ToldLaw => new(Law);

    /// <summary>The sources as they are printed.</summary>
    public LatinText ToldEvidence => new(EvidenceLine);

    public required string Reviewed { get; init; }

    /// <summary>Where the species' page is on the web.</summary>
    public required string PageAddress { get; init; }

    public required string PageHref { get; init; }

    /// <summary>To the species' page; nothing where its address is too long for a code.</summary>
    public required CodeDrawing? Code { get; init; }

    /// <summary>Of all that the sheet shows.</summary>
    public required string Mark { get; init; }

    internal Entry? Entry { get; init; }

    /// <summary>All that takes room on it.</summary>
    internal SheetText? Shown { get; init; }
}
