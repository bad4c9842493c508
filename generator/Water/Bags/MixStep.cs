using CareSheets.Quantities;

namespace CareSheets.Water.Bags;

/// <summary>The bag when so many volumes of tank water have come to one of its own.</summary>
/// <param name="Volumes">Of tank water for each of bag water.</param>
/// <param name="PH">From no CO₂ lost while mixing to all of it lost.</param>
/// <param name="Unionised">Likewise; nothing where the bag's ammonia was not measured.</param>
public sealed record MixStep(double Volumes, Range<Acidity> PH, Range<Ammonia>? Unionised);
