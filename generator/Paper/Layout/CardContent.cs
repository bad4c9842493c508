namespace CareSheets.Paper.Layout;

/// <summary>What a card has to show.</summary>
/// <param name="Parts">The most important first: what does not fit drops from the end.</param>
/// <param name="Foot">The shop and the day, which every card carries with its mark.</param>
public sealed record CardContent(HeadPart Head, IReadOnlyList<ICardPart> Parts, CardFoot Foot);

/// <param name="Shop">Whose card it is.</param>
/// <param name="Date">When the entry was last read through. Not part of the mark: a fresh look changes no fact.</param>
public sealed record CardFoot(string Shop, string Date);
