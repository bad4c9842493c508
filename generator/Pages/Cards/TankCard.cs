using CareSheets.Paper.Layout;
using CareSheets.Species;

namespace CareSheets.Pages.Cards;

/// <summary>The card on the tank front, alone on a page of its own size.</summary>
public sealed record TankCard : IPage
{
    public string Template => "tank-card";

    public required string Address { get; init; }

    public required PageFrame Frame { get; init; }

    /// <summary>The style sheet that gives the page the card's size.</summary>
    public required string StyleHref { get; init; }

    public required Leaf Leaf { get; init; }

    /// <summary>What found no room, in a sentence; empty when all did.</summary>
    public required string Dropped { get; init; }

    public required string PageHref { get; init; }

    internal Entry? Entry { get; init; }

    /// <summary>What stands where, with what it leaves out and its mark.</summary>
    internal CardPlan? Plan { get; init; }
}
