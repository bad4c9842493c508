using CareSheets.Quantities.Notation;

namespace CareSheets.Quantities;

/// <summary>Ranges as people write them, read.</summary>
public static class QuantityText
{
    /// <summary>
    /// Reads one figure, two joined by a dash or "to", or one after a comparison sign. Decimal
    /// points only, no exponents, no fractions; never throws on any text, and takes time in
    /// proportion to its length.
    /// </summary>
    /// <param name="text">Space around it does not matter; places in a problem count it.</param>
    /// <param name="dimension">What is measured.</param>
    /// <param name="basisRequired">
    /// The length of an animal, which must state TL, SL or DW; without, a basis is a problem.
    /// </param>
    public static ParseResult<StatedRange> Parse(
        string text, Dimension dimension, bool basisRequired = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(dimension);
        var problems = new QuantityProblems(text, dimension, basisRequired);
        return new QuantitySyntax(text, problems).Read().Then(parts =>
            new QuantityMeaning(parts, dimension, basisRequired, problems).Read(text.Trim()));
    }
}
