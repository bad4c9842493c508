namespace CareSheets.Quantities;

/// <summary>The sign before a range that has one end.</summary>
/// <remarks>
/// Husbandry figures are not sharp enough for "above" and "from" to differ in computation:
/// ranges are closed, the sign is kept only for the text.
/// </remarks>
public enum Bound
{
    None,
    Above,
    AtOrAbove,
    Below,
    AtOrBelow,
}
