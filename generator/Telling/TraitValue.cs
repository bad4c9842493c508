using CareSheets.Quantities;

namespace CareSheets.Telling;

/// <summary>A figure of an entry: the number that is compared, and what was stated.</summary>
/// <param name="Number">In the canonical unit.</param>
/// <param name="Stated">Nothing for a plain count.</param>
public sealed record TraitValue(double Number, StatedRange? Stated);
