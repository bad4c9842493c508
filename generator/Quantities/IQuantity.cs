using System.Numerics;

namespace CareSheets.Quantities;

/// <summary>
/// A measured value that knows its dimension; ordered by size, unequal ones compare.
/// </summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf>
    : IEquatable<TSelf>, IComparable<TSelf>, IComparisonOperators<TSelf, TSelf, bool>
    where TSelf : struct, IQuantity<TSelf>
{
    static abstract Dimension Dimension { get; }

    /// <summary>In the canonical unit of <see cref="Dimension"/>; always finite.</summary>
    double Canonical { get; }

    /// <exception cref="ArgumentOutOfRangeException">NaN, infinite or impossible.</exception>
    static abstract TSelf FromCanonical(double value);
}
