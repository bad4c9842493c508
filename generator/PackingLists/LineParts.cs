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

    public string Remark { get; set; } = "";

    public string Strain => string.Join(' ', _forms.Distinct());

    public string Place => string.Join(' ', _places.Distinct());

    public IReadOnlyList<string> Unclear => [.. _unclear.Distinct()];

    public void Doubt(string what) => _unclear.Add(what);

    /// <summary>A word of the strain, written out; one that is shouted is lowered.</summary>
    public void AddForm(string text) => _forms.Add(
        ListWords.Find(text) is { Kind: WordKind.Form, Meaning: { Length: > 0 } meaning } ? meaning
        : text.Length > 2 && text.All(char.IsUpper) ? text.ToLowerInvariant()
        : text);

    /// <summary>Takes sizes, marks and words out of a text and gives what is left, words in their order.</summary>
    public string TakeFrom(string text)
    {
        (var size, text) = LineSize.Take(Joined().Replace(text, m => m.Value.Replace(" ", "").Replace("-", "")));
        if (Size.Length == 0)
            Size = size;
        var tags = new List<string>();
        text = NameReader.TakeTags(text, tags);
        var left = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where((w, i) => !Take(w, i));
        return string.Join(' ', left.Concat(tags.Select(t => $"\"{t}\""))).Trim(',', ';', '-', ' ');
    }

    private bool Take(string word, int index)
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
        return ListWords.Find(word) is { } known && Take(word, known, index);
    }

    private bool Take(string word, ListWord known, int index)
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
            default:
                return false;
        }
    }

    [GeneratedRegex(@"^(?<males>\d{1,2})[,/.+:](?<females>\d{1,2})$")]
    private static partial Regex Ratio();

    /// <summary>Words written apart or together: tank bred, tank-bred, long fin; L 90, but not L 10 cm.</summary>
    [GeneratedRegex(
        @"\b(?:tank|captive|farm)[ -](?:bred|raised)\b|\bwild[ -]caught\b|\bmixed[ -]colou?rs\b|" +
        @"\bL \d{2,4}\b(?!\s*(?:cm|mm|in|[""″'/.,–-]))|" +
        @"\b(?:long|hi)[ -]fin\b|\bsub[ -]total\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex Joined();
}
