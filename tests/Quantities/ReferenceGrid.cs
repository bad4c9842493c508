namespace CareSheets.Tests.Quantities;

/// <summary>
/// The figures on which we and a reference library must agree: always the same ones.
/// </summary>
internal static class ReferenceGrid
{
    // Any number would do, so long as it stays.
    private const int Start = 811;

    /// <summary>Both ends and 500 figures between them.</summary>
    public static IEnumerable<double> Between(double low, double high)
    {
        var random = new Random(Start);
        return Enumerable.Range(0, 500)
            .Select(_ => low + ((high - low) * random.NextDouble()))
            .Append(low)
            .Append(high);
    }
}
