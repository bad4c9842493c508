using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>
/// A transport bag as it was measured when it was opened; what was not measured is none, and only
/// its temperature has to be known.
/// </summary>
public sealed record BagReading(Temperature Temperature)
{
    public Acidity? PH { get; init; }

    /// <summary>NH₃ and NH₄⁺ together, as a kit reads it.</summary>
    public Ammonia? Ammonia { get; init; }

    public CarbonateHardness? Alkalinity { get; init; }

    public Elapsed? UnderWay { get; init; }
}
