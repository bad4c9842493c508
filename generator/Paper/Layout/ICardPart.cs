namespace CareSheets.Paper.Layout;

/// <summary>Something a card shows as a whole or not at all.</summary>
public interface ICardPart
{
    CardPlace Place { get; }

    /// <summary>What people call it, when told that it found no room.</summary>
    string Name { get; }

    /// <summary>All it says, for the mark of the card's content.</summary>
    IEnumerable<string> Texts { get; }

    Block Lay(double width, CardType type);
}
