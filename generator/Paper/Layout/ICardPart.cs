namespace CareSheets.Paper.Layout;

/// <summary>Something that a card shows or not, as a whole.</summary>
public interface ICardPart
{
    CardPlace Place { get; }

    /// <summary>What people call it, when told that it found no room.</summary>
    string Name { get; }

    /// <summary>All it says, for the mark of the card's content.</summary>
    IEnumerable<string> Texts { get; }

    /// <summary>What is shown where the whole finds no room; nothing where it is shown whole or not at all.</summary>
    ICardPart? Shorter => null;

    Block Lay(double width, CardType type);
}
