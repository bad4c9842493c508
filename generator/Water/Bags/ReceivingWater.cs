using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>The water that the fishes of a bag are to live in, as far as it is known.</summary>
/// <param name="Name">Of the system; empty where it has none.</param>
public sealed record ReceivingWater(string Name)
{
    public Temperature? Temperature { get; init; }

    public Acidity? PH { get; init; }

    public CarbonateHardness? Alkalinity { get; init; }
}
