using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>A sum that can't be done, with what would be allowed instead.</summary>
/// <param name="Of">What was refused; the figures are in its canonical unit.</param>
/// <param name="Low">Least that is allowed, or none.</param>
/// <param name="High">Most that is allowed, or none.</param>
/// <param name="Formula">Whose formula has that range, where a formula is the reason.</param>
public sealed record Refusal(
    RefusalReason Reason, Dimension Of, double Given, double? Low, double? High, string Formula = "")
{
    /// <summary>Nothing where the value lies within the range of the formula.</summary>
    internal static Refusal? Outside<T>(Range<T> allowed, T value, string formula)
        where T : struct, IQuantity<T> => allowed.Contains(value)
        ? null
        : new Refusal(
            RefusalReason.OutsideFormula, T.Dimension, value.Canonical,
            allowed.Min?.Canonical, allowed.Max?.Canonical, formula);
}
