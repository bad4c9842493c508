namespace CareSheets.Paper.Layout;

/// <summary>The outline of a body, to be drawn at a scale beside a ruler.</summary>
/// <param name="Path">SVG path data; across from 0 to <paramref name="Total"/>, down from 0 to 1.</param>
/// <param name="Total">The whole drawing's length, as a multiple of the length that is measured.</param>
/// <param name="Deep">The drawing's height, as a multiple of the length that is measured.</param>
/// <param name="Length">What is measured, in mm of the living animal.</param>
public sealed record Outline(string Path, double Total, double Deep, double Length);
