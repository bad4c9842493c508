namespace CareSheets.Quantities;

/// <summary>
/// A range as one reader sees it; approximate if rounding moved it to the nearest figure, whichever
/// way that was, so that the page should say "about".
/// </summary>
public sealed record ShownRange(string Text, bool IsApproximate);
