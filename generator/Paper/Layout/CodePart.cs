namespace CareSheets.Paper.Layout;

/// <summary>The QR code in the corner. Its quiet zone may reach into the card's margin, which is white too.</summary>
/// <param name="Caption">What the code leads to, for who does not see it.</param>
public sealed record CodePart(string Name, QrCode Code, string Caption) : ICardPart
{
    /// <summary>
    /// The smallest module in mm: five dots of a printer of 300 to the inch. A module of a whole number of
    /// dots prints as a clean square.
    /// </summary>
    public const double Least = 25.4 / 60;

    /// <summary>Six dots of 300 to the inch, three of 150.</summary>
    public const double Roomy = 25.4 / 50;

    private const double WidestShare = 0.46;
    private const double HighestShare = 0.55;
    private const double RoomyShare = 0.46;

    /// <summary>Whether its modules are the smallest, for want of room.</summary>
    public bool IsSmall { get; init; }

    public CardPlace Place => CardPlace.Corner;

    public ICardPart? Shorter => IsSmall ? null : this with { IsSmall = true };

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

    private double Module(double width, double height) =>
        !IsSmall && Fits(Roomy, width, height, RoomyShare) ? Roomy : Least;

    private bool Fits(double module, double width, double height, double highest)
    {
        var taken = (Code.Modules + QrCode.QuietZone) * module;
        return taken <= width * WidestShare && taken <= height * highest;
    }
}
