namespace CareSheets.Pages.Cards;

/// <summary>
/// A printed page of one or more cards, as ready texts of attributes: lengths in millimetres without
/// a unit, but for the leaf's own sides, which name it.
/// </summary>
/// <param name="Height">A hair less than the paper's: a drawing as high as its page adds a blank one.</param>
public sealed record Leaf(
    string Width, string Height, string View, IReadOnlyList<CardDrawing> Cards, IReadOnlyList<LineDrawing> CutMarks);

/// <summary>A card at its place on a leaf.</summary>
public sealed record CardDrawing(
    string X, string Y, string Width, string Height, string View,
    IReadOnlyList<TextDrawing> Texts, IReadOnlyList<BoxDrawing> Boxes, IReadOnlyList<ShapeDrawing> Shapes);

/// <param name="Face">A class of the theme: plain, bold or latin.</param>
/// <param name="Width">
/// The measured width, which holds on machines with other fonts too; empty for letters that no table
/// of widths has, which were taken for wider than they are.
/// </param>
public sealed record TextDrawing(
    string X, string Y, string Size, string Face, string Width, string Text, bool IsLatin);

public sealed record BoxDrawing(string X, string Y, string Width, string Height);

/// <param name="Place">Where it goes and how far it is stretched, as an SVG transform.</param>
public sealed record ShapeDrawing(string Place, string Path, string Label);

public sealed record LineDrawing(string X1, string Y1, string X2, string Y2);
