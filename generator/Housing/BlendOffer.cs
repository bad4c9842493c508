using CareSheets.Quantities;

namespace CareSheets.Housing;

/// <summary>Two waters that together have what a species needs of hardness and salts.</summary>
/// <param name="OfOne">Shares of the first that do.</param>
/// <param name="Chosen">One of them, in steps of 5 % where such a step lies among them.</param>
/// <param name="Hardness">Of the chosen blend, where both are known.</param>
/// <param name="PH">
/// Of the chosen blend, from the moment of mixing to when all spare CO₂ has left; nothing where a figure
/// for it is missing. Where a tank settles in it has to be measured.
/// </param>
public sealed record BlendOffer(
    WaterSource One, WaterSource Other, Range<Share> OfOne, Share Chosen, GeneralHardness? Hardness,
    Range<Acidity>? PH);
