namespace CareSheets.Tankmates;

/// <summary>The tank that a species needs for its smallest group, grown up.</summary>
/// <param name="Length">In cm, the largest figure stated; width and height likewise.</param>
/// <param name="Volume">In L.</param>
/// <param name="Needs">What it must offer, in the words of the schema.</param>
public sealed record Housing(
    double Length, double? Width, double? Height, double Volume,
    Substrate Substrate, Lid Lid, IReadOnlyList<string> Needs);
