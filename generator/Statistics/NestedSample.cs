namespace CareSheets.Statistics;

/// <summary>
/// One response on the leaves of a tree; a leaf without a value teaches nothing and is predicted.
/// </summary>
public sealed class NestedSample
{
    /// <summary>
    /// Values lie within ± this bound, so that no square or sum of squares can overflow.
    /// </summary>
    public const double LargestMagnitude = 1e100;

    private readonly double?[] _values;

    private NestedSample(NestedTree tree, double?[] values)
    {
        Tree = tree;
        _values = values;
        Count = values.Count(value => value.HasValue);
    }

    public NestedTree Tree { get; }

    /// <summary>The number of leaves that have a value.</summary>
    public int Count { get; }

    public double? this[int leaf] => _values[leaf];

    /// <summary>Takes one value, or null, per leaf in the order of the tree's leaves.</summary>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is NaN, infinite or beyond <see cref="LargestMagnitude"/>.
    /// </exception>
    public static NestedSample From(NestedTree tree, IReadOnlyList<double?> values)
    {
        if (values.Count != tree.LeafCount)
        {
            throw new ArgumentException("Every leaf needs its value or its null.");
        }

        if (values.Any(value => value is { } y && !(Math.Abs(y) <= LargestMagnitude)))
        {
            throw new ArgumentOutOfRangeException(nameof(values), "A value is not usable.");
        }

        return new NestedSample(tree, [.. values]);
    }

    internal double[] Known() => [.. _values.OfType<double>()];
}
