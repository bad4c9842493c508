namespace CareSheets.Paper;

/// <summary>A card that was printed, with the mark of what it shows.</summary>
/// <param name="Entry">The entry's name, as in <c>danio-rerio</c>.</param>
/// <param name="Units">Units shown, where not both: metric or us.</param>
/// <param name="Arrival">The arrival whose price and count it shows, if any.</param>
public sealed record PrintedCard(
    string Entry, PaperSize Size, string? Units, string? Arrival, string Mark, DateOnly Printed)
{
    /// <summary>Printing it again replaces the one before.</summary>
    public bool Replaces(PrintedCard other) =>
        (Entry, Size, Units, Arrival) == (other.Entry, other.Size, other.Units, other.Arrival);
}
