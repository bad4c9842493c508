namespace CareSheets.Pages;

/// <summary>Columns of equal height that are filled one after the other, as a browser balances them.</summary>
internal static class SheetColumns
{
    /// <summary>The least height, in mm, at which so many columns hold all pieces in their order.</summary>
    /// <param name="pieces">Heights of what may not be parted.</param>
    /// <param name="line">Of one line: where one may not stand alone, it goes with the next.</param>
    public static double Height(IReadOnlyList<double> pieces, int columns, double line)
    {
        var (low, high) = (pieces.Max(), pieces.Sum());
        while (high - low > 0.05)
        {
            var middle = (low + high) / 2;
            (low, high) = Filled(pieces, middle) <= columns ? (low, middle) : (middle, high);
        }
        return high + (line * 0.6);
    }

    /// <summary>How many columns of a height the pieces fill.</summary>
    private static int Filled(IReadOnlyList<double> pieces, double height)
    {
        var (columns, filled) = (1, 0.0);
        foreach (var piece in pieces)
        {
            if (filled + piece > height)
                (columns, filled) = (columns + 1, 0);
            filled += piece;
        }
        return columns;
    }
}
