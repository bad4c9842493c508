namespace CareSheets.Paper.Layout;

/// <summary>The QR code in the corner. Its quiet zone may reach into the card's margin, which is white too.</summary>
/// <param name="Caption">What the code leads to, for who does not see it.</param>
public sealed record CodePart(string Name, QrCode Code, string Caption) : ICardPart
{
    /// <summary>A module in mm: no smaller than 0.4, which phones read and shop printers print.</summary>
    public const double Least = 0.4;

    private const double Roomy = 0.5;
    private const double WidestShare = 0.4;
    private const double HighestShare = 0.55;
    private const double RoomyShare = 0.4;

    public CardPlace Place => CardPlace.Corner;

    public IEnumerable<string> Texts => [Code.Address];

    /// <summary>From the first dark module to the last, in mm.</summary>
    public double Side(double width, double height) => Code.Modules * Module(width, height);

    /// <summary>What text must keep away, on the left and above.</summary>
    public double Quiet(double width, double height) => QrCode.QuietZone * Module(width, height);

    /// <summary>Whether the code leaves enough of the card for everything else.</summary>
    public bool HasRoom(double width, double height) => Fits(Least, width, height, HighestShare);

    public Block Lay(double width, CardType type) => new(Code.Modules * Least,
        [new InkShape(0, 0, Least, Least, Code.Path, Caption)]);

    public IEnumerable<Ink> At(double width, double height)
    {
        var (module, side) = (Module(width, height), Side(width, height));
        yield return new InkShape(width - side, height - side, module, module, Code.Path, Caption);
    }

    private double Module(double width, double height) => Fits(Roomy, width, height, RoomyShare) ? Roomy : Least;

    private bool Fits(double module, double width, double height, double highest)
    {
        var taken = (Code.Modules + QrCode.QuietZone) * module;
        return taken <= width * WidestShare && taken <= height * highest;
    }
}
