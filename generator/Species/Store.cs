using CareSheets.Paper;
using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>The shop that publishes the collection.</summary>
/// <param name="Address">Address of the published site, with a slash at its end.</param>
/// <param name="Units">System shown first where the writer's own units do not decide.</param>
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
    /// <summary>
    /// The shop's own limits beyond which relatives are said to disagree, by the field of the care range,
    /// in the canonical unit of a difference.
    /// </summary>
    public IReadOnlyDictionary<string, double> RelativesDisagree { get; init; } =
        new Dictionary<string, double>();

    /// <summary>The cards on the tanks.</summary>
    public required CardForm Cards { get; init; }
}

/// <summary>A water of the shop, its tap or a system of tanks, with the figures known of it.</summary>
/// <param name="Figures">By the field of the care range: temperature, ph, hardness and so on.</param>
public sealed record StoreWater(string Name, IReadOnlyDictionary<string, StatedRange> Figures);
