namespace CareSheets.Pages.Outlines;

/// <summary>A grown fish drawn over a ruler, as long as it is by that ruler, whatever the screen.</summary>
/// <param name="View">The picture's own field, as SVG's viewBox.</param>
/// <param name="Place">Where the outline stands in it, as an SVG transform.</param>
/// <param name="Path">The outline, as SVG path data.</param>
/// <param name="RulerY">How far down the ruler lies.</param>
/// <param name="Description">The same in words, for those who don't see it.</param>
public sealed record SizePicture(
    string View, string Place, string Path, string RulerY, IReadOnlyList<RulerMark> Marks, string Description);

/// <summary>A stroke of the ruler. <see cref="Label"/> is empty at those between two figures.</summary>
public sealed record RulerMark(string X, string Height, string Label, string Anchor);
