namespace CareSheets.Quantities;

/// <summary>
/// What kept a text from being read as a range. Each kind always carries the values named here.
/// </summary>
public enum QuantityProblemKind
{
    /// <summary>Values: suggestion (a text in the right form).</summary>
    Empty,

    /// <summary>Values: found, suggestion.</summary>
    NotANumber,

    /// <summary>Values: found (the figures), suggestion (with a likely unit).</summary>
    NoUnit,

    /// <summary>
    /// Values: found (the figure), suggestion (the whole text with decimal points).
    /// </summary>
    CommaDecimal,

    /// <summary>Values: first, second, suggestion (the two swapped).</summary>
    Reversed,

    /// <summary>Values: unit, expected and actual (keys of dimensions), choices (units).</summary>
    WrongKind,

    /// <summary>Values: unit, choices (the units that fit).</summary>
    UnknownUnit,

    /// <summary>
    /// Values: unit, reason (an <see cref="AmbiguityReason"/>), choices, suggestion.
    /// </summary>
    AmbiguousUnit,

    /// <summary>Two units or two bases in one range. Values: first, second.</summary>
    MixedUnits,

    /// <summary>Values: choices (TL, SL, DW), suggestion.</summary>
    MissingBasis,

    /// <summary>Values: basis, suggestion (without it).</summary>
    UnexpectedBasis,

    /// <summary>Below absolute zero, a negative length. Values: found, limit.</summary>
    Impossible,

    /// <summary>Values: found (the first figure too many), suggestion.</summary>
    TooManyNumbers,
}
