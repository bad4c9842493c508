namespace CareSheets.Pages.Cards;

/// <summary>Chosen cards on their sheets, in one document for the printer.</summary>
public sealed record CardLeaves : IPage
{
    public string Template => "card-leaves";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    public required string StyleHref { get; init; }

    /// <summary>How many cards on how many sheets of what.</summary>
    public required string Lead { get; init; }

    /// <summary>For each card that could not show all, what it left out.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    public required IReadOnlyList<Leaf> Leaves { get; init; }
}
