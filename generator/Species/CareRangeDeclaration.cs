using CareSheets.Quantities;

namespace CareSheets.Species;

/// <summary>The scale on which values of a care range are shown and compared.</summary>
public enum RangeScale
{
    Linear,
    Logarithmic,
}

/// <summary>
/// A care range, or the adult length, as the schema declares it. Adding one to the schema is all it takes: it is then
/// read, checked, shown and compared.
/// </summary>
/// <param name="Plausible">Limits beyond which a figure is taken for a slip of the pen.</param>
/// <param name="Window">The stretch that a range bar shows.</param>
/// <param name="ScaleStart">
/// Added to a value before its logarithm is taken, in the canonical unit, so that nothing has one too; 0 on
/// a linear scale.
/// </param>
/// <param name="ComparedAmongRelatives">Whether relatives are asked about it.</param>
/// <param name="IsAlwaysShown">Whether readers are told of it even when it is unknown.</param>
public sealed record CareRangeDeclaration(
    string Field,
    Dimension Dimension,
    string Label,
    StatedRange Plausible,
    StatedRange Window,
    RangeScale Scale,
    double ScaleStart,
    bool ComparedAmongRelatives,
    bool IsAlwaysShown);

/// <summary>A care property of a few words as the schema declares it, in its order of growing strength.</summary>
public sealed record CareWordDeclaration(string Field, string Label, IReadOnlyList<string> Words);
