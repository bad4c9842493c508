namespace CareSheets.Paper;

/// <summary>A sheet or a card as it lies on the table, in millimetres.</summary>
/// <remarks>
/// From 20 to 1000 mm on each side. The A sizes are those of ISO 216:2007, Letter is 8.5 by 11 in
/// (ANSI/ASME Y14.1).
/// </remarks>
public readonly record struct PaperSize
{
    public const double Least = 20;
    public const double Most = 1000;

    private PaperSize(double width, double height) => (Width, Height) = (width, height);

    public static PaperSize A4 { get; } = new(210, 297);

    public static PaperSize Letter { get; } = new(215.9, 279.4);

    public static PaperSize A6 { get; } = new(105, 148);

    public static PaperSize A7 { get; } = new(74, 105);

    public double Width { get; }

    public double Height { get; }

    public double ShortSide => Math.Min(Width, Height);

    /// <exception cref="ArgumentOutOfRangeException">A side is no length that a paper can have.</exception>
    public static PaperSize Of(double width, double height) => IsSide(width) && IsSide(height)
        ? new PaperSize(width, height)
        : throw new ArgumentOutOfRangeException(nameof(width), $"No paper is {width} by {height} mm.");

    public static bool IsSide(double side) => side is >= Least and <= Most;

    public PaperSize Stand(Orientation orientation) => orientation switch
    {
        Orientation.Portrait => new PaperSize(ShortSide, Math.Max(Width, Height)),
        Orientation.Landscape => new PaperSize(Math.Max(Width, Height), ShortSide),
    };
}
