using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>
/// What becomes of the ammonia in a bag, closed, aired and mixed; a range that is not single is a
/// span over what was not measured.
/// </summary>
public sealed record BagOutcome
{
    public required BagReading Bag { get; init; }

    public required ReceivingWater Tank { get; init; }

    /// <summary>Un-ionised ammonia in the closed bag; nothing where its ammonia is unknown.</summary>
    public required Range<Ammonia>? Now { get; init; }

    /// <summary>pH when all spare CO₂ has left: the most that airing can bring.</summary>
    public required Range<Acidity> AiredPH { get; init; }

    public required Range<Ammonia>? Aired { get; init; }

    /// <summary>Nothing where the tank's pH is unknown.</summary>
    public required IReadOnlyList<MixStep> Steps { get; init; }

    /// <summary>
    /// The most total ammonia of which, aired, no more than the limit is un-ionised; a kit's reading
    /// can be held against it.
    /// </summary>
    public required Ammonia LargestTotal { get; init; }

    /// <summary>From bag to tank; nothing where either is unknown.</summary>
    public required AcidityDifference? Rise { get; init; }

    /// <summary>From bag to tank.</summary>
    public required TemperatureDifference? Warming { get; init; }

    /// <summary>Afloat until the limit is met; nothing where the tank's temperature is unknown.</summary>
    public required Elapsed? Afloat { get; init; }

    public required BagAdvice Advice { get; init; }

    public required BagReason Reason { get; init; }

    public required IReadOnlyList<BagCaution> Cautions { get; init; }

    public required WaterLimits Limits { get; init; }

    /// <summary>By how much the hydrogen ions differ: ten for each unit of pH.</summary>
    public double? HydrogenRatio => Rise is { } rise ? Math.Pow(10, Math.Abs(rise.InPH)) : null;

    /// <summary>The most un-ionised ammonia of all ways of opening, or none where it is unknown.</summary>
    public Ammonia? Worst =>
        Aired is not { } aired ? null : Steps.Select(s => s.Unionised!.Value.Max!.Value).Append(aired.Max!.Value).Max();
}
