namespace CareSheets.Paper.Layout;

/// <summary>Something printed at its place on a card, in millimetres from the card's upper left.</summary>
public abstract record Ink
{
    public abstract Ink Move(double right, double down);
}

/// <summary>A line of text. <paramref name="Y"/> is its base line, <paramref name="Size"/> its em in mm.</summary>
public sealed record InkText(double X, double Y, double Size, Face Face, string Text) : Ink
{
    public double Width => FaceWidths.Of(Text, Face, Size);

    public override Ink Move(double right, double down) => this with { X = X + right, Y = Y + down };
}

/// <summary>A filled rectangle: rules and the ticks of rulers.</summary>
public sealed record InkBox(double X, double Y, double Width, double Height) : Ink
{
    public override Ink Move(double right, double down) => this with { X = X + right, Y = Y + down };
}

/// <summary>A filled outline whose own units are stretched to millimetres.</summary>
/// <param name="Path">SVG path data.</param>
/// <param name="Label">What a reader who does not see it is told; empty where text beside it says the same.</param>
public sealed record InkShape(double X, double Y, double Across, double Down, string Path, string Label) : Ink
{
    public override Ink Move(double right, double down) => this with { X = X + right, Y = Y + down };
}
