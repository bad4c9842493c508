namespace CareSheets.Quantities;

/// <summary>How far a range reaches, in the type that a difference of its ends has.</summary>
/// <remarks>
/// Beside <see cref="Range{T}"/>, which cannot name that type. None if an end is missing.
/// </remarks>
public static class RangeWidth
{
    public static TemperatureDifference? Width(this Range<Temperature> range) =>
        range.Max - range.Min;

    public static AcidityDifference? Width(this Range<Acidity> range) => range.Max - range.Min;

    public static T? Width<T>(this Range<T> range)
        where T : struct, IAmount<T> => range.Max - range.Min;
}
