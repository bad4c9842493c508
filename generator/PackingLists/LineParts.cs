using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>What was found in a line beside its name, collected word by word.</summary>
internal sealed partial class LineParts
{
    private readonly List<string> _unclear = [];
    private readonly List<string> _forms = [];
    private readonly List<string> _places = [];

    public string Size { get; set; } = "";

    public string SizeMark { get; private set; } = "";

    public string Sex { get; private set; } = "";

    public string Provenance { get; private set; } = "";

    public int? Count { get; set; }

    public string Remark { get; set; } = "";

    public string Strain => string.Join(' ', _forms.Distinct());

    public string Place => string.Join(' ', _places.Distinct());

    public IReadOnlyList<string> Unclear => [.. _unclear.Distinct()];

    public void Doubt(string what) => _unclear.Add(what);

    public void AddForm(string text) => _forms.Add(text);

    public void AddPlace(string text) => _places.Add(text);

    /// <summary>Takes sizes, marks and words out of a text and gives what is left, words in their order.</summary>
    public string TakeFrom(string text, bool takesForms)
    {
        (var size, text) = LineSize.Take(Joined().Replace(text, m => m.Value.Replace(" ", "").Replace("-", "")));
        if (Size.Length == 0)
            Size = size;
        var tags = new List<string>();
        text = NameReader.TakeTags(text, tags);
        var left = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where((w, i) => !Take(w, i, takesForms));
        return string.Join(' ', left.Concat(tags.Select(t => $"\"{t}\""))).Trim(',', ';', '-', ' ');
    }

    /// <summary>A cell of a column that says what its marks mean: M under Sex is a male.</summary>
    public void TakeSex(string cell)
    {
        var text = TakeFrom(cell, takesForms: false);
        _unclear.RemoveAll(u => u.StartsWith(cell + ":", StringComparison.OrdinalIgnoreCase));
        if (cell is "M" or "m" or "F" or "f")
            Sex = cell is "M" or "m" ? "male" : "female";
        else if (text.Length > 0)
            Doubt($"{text}: in the column of the sex");
    }

    /// <summary>What is no word for a provenance is a place.</summary>
    public void TakeProvenance(string cell)
    {
        if (cell is "TB" or "tb")
            Provenance = "bred";
        else if (cell is "W" or "w")
            Provenance = "wild";
        else if (TakeFrom(cell, takesForms: false) is { Length: > 0 } place)
            AddPlace(place);
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

    private bool Take(string word, int index, bool takesForms)
    {
        if (Ratio().Match(word) is { Success: true })
        {
            Doubt($"{word}: males and females, or a number");
            return true;
        }
        if (word.All(c => c is '♂' or '♀'))
        {
            Sex = word.Distinct().Count() > 1 ? "pairs" : word[0] == '♂' ? "male" : "female";
            return true;
        }
        return ListWords.Find(word) is { } known && Take(word, known, index, takesForms);
    }

    private bool Take(string word, ListWord known, int index, bool takesForms)
    {
        var isMark = word.Length > 1 || char.IsUpper(word[0]);
        switch (known.Kind)
        {
            case WordKind.Provenance:
                Provenance = known.Meaning;
                return true;
            case WordKind.Sex:
                Sex = known.Meaning;
                return true;
            case WordKind.Size when index > 0 && isMark:
                SizeMark = known.Meaning;
                return true;
            case WordKind.Either when index > 0 && isMark && !word.Any(char.IsLower):
                Doubt(known.Meaning);
                return true;
            case WordKind.Form when takesForms && index > 1:
                AddForm(word);
                return true;
            default:
                return false;
        }
    }

    /// <summary>A count that stands in a cell: 25, 1.000, 4 x 25, 25 pcs.</summary>
    public static int? CountOf(string cell)
    {
        var found = Counted().Match(cell);
        if (!found.Success)
            return null;
        int Number(string group) => int.Parse(
            found.Groups[group].Value.Replace(",", "").Replace(".", ""),
            NumberStyles.None, CultureInfo.InvariantCulture);
        var count = Number("count") * (found.Groups["bags"].Success ? (long)Number("bags") : 1);
        return count is > 0 and <= 100_000 ? (int)count : null;
    }

    [GeneratedRegex(
        @"^(?:(?<bags>\d{1,3})\s*[x×*]\s*)?" +
        @"(?<count>\d{1,3}(?:[.,]\d{3})|\d{1,6})(?:\.0+)?\s*(?:pcs?|stk|st|heads?)?\.?$",
        RegexOptions.IgnoreCase)]
    private static partial Regex Counted();

    [GeneratedRegex(@"^\d{1,2}[,/.+:]\d{1,2}$")]
    private static partial Regex Ratio();

    /// <summary>Words written apart or together: tank bred, tank-bred, wild caught, long fin.</summary>
    [GeneratedRegex(
        @"\b(?:tank|captive|farm)[ -](?:bred|raised)\b|\bwild[ -]caught\b|\b(?:long|hi)[ -]fin\b|\bsub[ -]total\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex Joined();
}
