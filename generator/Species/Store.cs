using CareSheets.Paper;
using CareSheets.Quantities;
using CareSheets.Water;

namespace CareSheets.Species;

/// <summary>The shop that publishes the collection.</summary>
/// <param name="Address">Address of the published site, with a slash at its end.</param>
/// <param name="Units">System shown first everywhere, in whichever the writer typed.</param>
/// <param name="Paper">Paper of the home sheets: A4 or Letter.</param>
public sealed record Store(
    string Name,
    string Place,
    string Address,
    string? Contact,
    string? About,
    string Language,
    UnitSystem Units,
    string Paper,
    string? Jurisdiction,
    StoreWater? Tap,
    IReadOnlyList<StoreWater> Systems)
{
    /// <summary>What every buyer is told beside the figures.</summary>
    public Advice Advice { get; init; } = Advice.None;

    /// <summary>The shop's licence to sell animals, as it is to be printed.</summary>
    public string? Licence { get; init; }

    /// <summary>
    /// The shop's own limits beyond which relatives are said to disagree, by the field of the care range,
    /// in the canonical unit of a difference.
    /// </summary>
    public IReadOnlyDictionary<string, double> RelativesDisagree { get; init; } =
        new Dictionary<string, double>();

    /// <summary>The cards on the tanks.</summary>
    public required CardForm Cards { get; init; }
    public Observation Observation { get; init; } = Observation.Usual;

    /// <summary>Currency of the prices, ISO 4217.</summary>
    public string? Currency { get; init; }

    /// <summary>For the pressure of its air; the level of the sea where the shop does not say.</summary>
    public Altitude Altitude { get; init; }

    /// <summary>The limits behind advice on water, the shop's own where it has any.</summary>
    public WaterLimits WaterLimits { get; init; } = WaterLimits.Default;
}

/// <summary>A water of the shop, its tap or a system of tanks, with the figures known of it.</summary>
/// <param name="Figures">By the field of the care range: temperature, ph, hardness and so on.</param>
public sealed record StoreWater(string Name, IReadOnlyDictionary<string, StatedRange> Figures);
