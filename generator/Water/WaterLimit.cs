using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>A limit that the shop acts on, and who says so. Sources disagree, so a shop may set its own.</summary>
public sealed record WaterLimit<T>(T Value, string Source)
    where T : struct, IQuantity<T>;
