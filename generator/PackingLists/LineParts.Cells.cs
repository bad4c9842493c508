using System.Text.RegularExpressions;

namespace CareSheets.PackingLists;

/// <summary>Cells of columns whose heading says what their marks mean.</summary>
internal sealed partial class LineParts
{
    /// <summary>M under Sex is a male, F a female, and 1,2 a male with two females.</summary>
    public void TakeSex(string cell)
    {
        if (cell is "M" or "m" or "F" or "f")
            Sex = cell is "M" or "m" ? "male" : "female";
        else if (Ratio().Match(cell) is { Success: true } ratio)
            TakeRatio(cell, ratio);
        else if (TakeFrom(cell) is { Length: > 0 } text)
            Doubt($"{text}: in the column of the sex");
    }

    private void TakeRatio(string cell, Match ratio)
    {
        Sex = (ratio.Groups["males"].Value, ratio.Groups["females"].Value) switch
        {
            ("1", "1") => "pairs",
            ("1", "2") => "trios",
            _ => "",
        };
        if (Sex.Length == 0)
            Doubt($"{cell}: in the column of the sex");
    }

    /// <summary>What is no word for a provenance is a place, or a mark that only the supplier knows.</summary>
    public void TakeProvenance(string cell)
    {
        if (cell is "TB" or "tb")
            Provenance = "bred";
        else if (cell is "W" or "w")
            Provenance = "wild";
        else if (TakeFrom(cell) is { Length: > 0 } left)
            TakePlace(left, "origin");
    }

    /// <summary>A cell that names a place. Of a mark nobody knows what it says, and no place is made of it.</summary>
    public void TakePlace(string cell, string column)
    {
        if (Mark().IsMatch(cell))
            Doubt($"{cell}: in the column of the {column}");
        else
            _places.Add(cell);
    }

    /// <summary>Six pairs, 20 males: gives the number of fish where that is sure.</summary>
    public int? TakeOddCount(string cell)
    {
        if (LineCount.WithWord(cell) is ({ } number, { } word) && ListWords.Find(word) is { Kind: WordKind.Sex } known)
        {
            Sex = known.Meaning;
            if (Sex is not ("pairs" or "trios"))
                return LineCount.Of(number);
            if (number == "1")
                return Sex == "pairs" ? 2 : 3; // one fish is no pair
            Doubt($"{cell}: {number} {Sex}, or {number} fish");
        }
        else
            Doubt($"{cell}: in the column of the count");
        return null;
    }

    /// <summary>What was read of a line that is one text.</summary>
    public int? TakeCount(TextCount read)
    {
        foreach (var doubt in read.Doubts)
            Doubt(doubt);
        if (read.Sex.Length > 0)
        {
            Sex = read.Sex;
            return LineCount.Of(read.Count);
        }
        if (LineCount.Of(read.Count) is not { } fish)
            return read.Count.Length > 0 ? TakeOddCount(read.Count) : null;
        DoubtPairs(fish.ToString(System.Globalization.CultureInfo.InvariantCulture));
        return fish;
    }

    /// <summary>Of what is sold in pairs or trios nobody knows whether they were counted or their fish.</summary>
    public void DoubtPairs(string count)
    {
        if (Sex is "pairs" or "trios")
            Doubt(count == "1" ? $"1: one of the {Sex}, or 1 fish" : $"{count}: {count} {Sex}, or {count} fish");
    }

    public void TakeSizeCell(string cell, string unitOfHeading)
    {
        if (cell.Length == 0)
            return;
        Size = LineSize.OfCell(cell, unitOfHeading);
        if (Size.Length > 0)
            return;
        if (LineSize.IsNumber(cell))
            Doubt($"{cell}: a size in cm or in inches");
        else
            SizeMark = cell;
    }

    [GeneratedRegex(@"^[A-Z]{1,3}\d?$", RegexOptions.IgnoreCase)]
    private static partial Regex Mark();
}
