using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>
/// Between which figures an unmeasured one is taken to lie, so that an outcome is a span: common
/// practice, no source. A span is an honest "don't know", not a likely range.
/// </summary>
public static class Assumed
{
    public static readonly Range<CarbonateHardness> Alkalinity = Range<CarbonateHardness>.Between(
        CarbonateHardness.FromGermanDegrees(0.5), CarbonateHardness.FromGermanDegrees(16));

    public static readonly Range<Acidity> BagPH =
        Range<Acidity>.Between(Acidity.FromPH(5.5), Acidity.FromPH(8));

    /// <summary>Figures from end to end, close enough that no outcome between two stands out.</summary>
    internal const int Steps = 8;

    /// <summary>What was measured alone, or figures spread over what is assumed.</summary>
    internal static IReadOnlyList<T> Try<T>(T? measured, Range<T> assumed)
        where T : struct, IQuantity<T>
    {
        if (measured is { } known)
            return [known];
        var (low, high) = (assumed.Min!.Value.Canonical, assumed.Max!.Value.Canonical);
        return [.. Enumerable.Range(0, Steps + 1).Select(i => T.FromCanonical(low + ((high - low) * i / Steps)))];
    }
}
