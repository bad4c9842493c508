using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>What a scheme calls a stretch of hardness.</summary>
/// <param name="Word">In the theme's words.</param>
/// <param name="Below">Where the next class begins, or nothing for the hardest.</param>
public sealed record HardnessClass(string Word, GeneralHardness? Below);
