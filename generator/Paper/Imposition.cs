namespace CareSheets.Paper;

/// <summary>Several cards on a sheet, edge to edge in the middle, so that one cut parts two of them.</summary>
/// <param name="Sheet">As it lies in the printer's queue: turned to whichever way holds more.</param>
public sealed record Imposition(PaperSize Sheet, PaperSize Card, int Columns, int Rows)
{
    /// <summary>Cut marks, in mm along the cut on both sides of each crossing.</summary>
    public const double Arm = 7;

    public int Count => Columns * Rows;

    /// <summary>A card is on a sheet of its own size, to print on cut card.</summary>
    public bool IsSingle => Sheet == Card;

    private double Left => (Sheet.Width - (Columns * Card.Width)) / 2;

    private double Top => (Sheet.Height - (Rows * Card.Height)) / 2;

    /// <summary>Nothing when not one card fits on the sheet.</summary>
    public static Imposition? Of(PaperSize card, PaperSize? sheet)
    {
        if (sheet is not { } paper)
            return new Imposition(card, card, 1, 1);
        var best = new[] { Orientation.Portrait, Orientation.Landscape }
            .Select(way => Fill(paper.Stand(way), card)).MaxBy(filled => filled.Count)!;
        return best.Count > 0 ? best : null;
    }

    /// <summary>Upper left corner of a place, counted in reading order from 0.</summary>
    public (double X, double Y) Place(int at) =>
        (Left + (at % Columns * Card.Width), Top + (at / Columns * Card.Height));

    /// <summary>
    /// Strokes along every cut at every crossing, clipped to the sheet. They lie on the cut itself
    /// and so never on what a card shows.
    /// </summary>
    /// <param name="cards">On this sheet; places without a card need no cut.</param>
    public IEnumerable<CutMark> CutMarks(int cards)
    {
        if (IsSingle)
            yield break;
        for (var column = 0; column <= Columns; column++)
        {
            for (var row = 0; row <= Rows && TouchesCard(column, row, cards); row++)
            {
                var (x, y) = (Left + (column * Card.Width), Top + (row * Card.Height));
                if (IsCut(y, Sheet.Height))
                    yield return new CutMark(Math.Max(0, x - Arm), y, Math.Min(Sheet.Width, x + Arm), y);
                if (IsCut(x, Sheet.Width))
                    yield return new CutMark(x, Math.Max(0, y - Arm), x, Math.Min(Sheet.Height, y + Arm));
            }
        }
    }

    private bool TouchesCard(int column, int row, int cards)
    {
        var (left, up) = (Math.Max(0, column - 1), Math.Max(0, row - 1));
        return (up * Columns) + left < cards;
    }

    /// <summary>Nothing is cut along the sheet's own edge, or within a millimetre of it.</summary>
    private static bool IsCut(double at, double side) => at > 1 && at < side - 1;

    /// <summary>A tenth of a millimetre of play, for a Letter sheet of half inches.</summary>
    private static Imposition Fill(PaperSize sheet, PaperSize card) => new(
        sheet, card, (int)((sheet.Width + 0.1) / card.Width), (int)((sheet.Height + 0.1) / card.Height));
}

/// <summary>A stroke to cut along, in mm of the sheet.</summary>
public sealed record CutMark(double X1, double Y1, double X2, double Y2);
