namespace CareSheets.Paper.Layout;

/// <summary>A card with every line at its place.</summary>
/// <param name="Inks">In the order in which they are read, in mm from the upper left of the card.</param>
/// <param name="Mark">Of all that it shows.</param>
/// <param name="Dropped">Parts without room, by their names, the most important first.</param>
/// <param name="HasWholeNames">Whether no name had to be cut.</param>
public sealed record CardPlan(
    PaperSize Size, CardType Type, IReadOnlyList<Ink> Inks, string Mark, IReadOnlyList<string> Dropped,
    bool HasWholeNames);
