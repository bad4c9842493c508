using CareSheets.Quantities;

namespace CareSheets.Tankmates;

/// <summary>The grown fish as its company meets it: how big, how built, with what mouth and appetite.</summary>
/// <param name="Length">Of grown fish, in cm on the stated basis, both ends known.</param>
public sealed record Body(
    Stretch Length, LengthBasis Basis, BodyShape Shape, Mouth Mouth, Appetite Appetite);
