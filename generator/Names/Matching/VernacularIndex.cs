namespace CareSheets.Names.Matching;

/// <summary>
/// Customers' names by their words. One name can mean many species and one species has many, so this
/// finds candidates and never an answer.
/// </summary>
internal sealed class VernacularIndex
{
    private const double LeastLikeness = 0.34;

    /// <summary>Of names that hold every word of a text. What more species share says little.</summary>
    private const double LikenessOfPart = 0.51;

    private const int MostOfPart = 5;

    private readonly List<(NamedSpecies Species, string Name, string[] Words)> _names;
    private readonly ILookup<string, int> _byWord;
    private readonly Dictionary<string, double> _weights;

    public VernacularIndex(IReadOnlyList<NamedSpecies> species)
    {
        _names =
        [
            .. species.SelectMany(s => s.VernacularNames.SelectMany(n => new[] { n, n.Replace("-", "") }.Distinct()
                .Select(spelt => (s, n, Words(spelt))))),
        ];
        _byWord = Enumerable.Range(0, _names.Count)
            .SelectMany(i => _names[i].Words.Select(w => (Word: w, Index: i)))
            .ToLookup(w => w.Word, w => w.Index);
        // A word that few names have says more than one that many have (Sparck Jones 1972, J. Doc. 28:11-21).
        _weights = _byWord.ToDictionary(w => w.Key, w => 1 + Math.Log((double)_names.Count / w.Count()));
    }

    /// <summary>Species that have the name, word for word in any order.</summary>
    public IEnumerable<NamedSpecies> Exactly(string text)
    {
        var words = Words(text);
        return words.Length == 0
            ? []
            : _byWord[words[0]].Where(i => words.Order().SequenceEqual(_names[i].Words.Order()))
                .Select(i => _names[i].Species).Distinct();
    }

    /// <summary>Names that share words with the text, each with the weighted share of common words.</summary>
    public IEnumerable<(NamedSpecies Species, string Name, double Likeness)> Like(string text)
    {
        var words = Words(text).Select(Known).Distinct().ToArray();
        var wholes = Wholes(words);
        return words.SelectMany(w => _byWord[w]).Distinct()
            .Select(i => (_names[i].Species, _names[i].Name,
                Likeness: Math.Max(Likeness(words, _names[i].Words), wholes.Contains(i) ? LikenessOfPart : 0)))
            .Where(n => n.Likeness >= LeastLikeness);
    }

    /// <summary>Names of which the words are a part, as Zebra is of each fish that is called so.</summary>
    private HashSet<int> Wholes(string[] words)
    {
        HashSet<int> found =
            [.. words.Take(1).SelectMany(w => _byWord[w]).Where(i => words.All(_names[i].Words.Contains))];
        return found.Select(i => _names[i].Species).Distinct().Count() <= MostOfPart ? found : [];
    }

    /// <summary>Small letters, no marks, no plural.</summary>
    private static string[] Words(string text) =>
    [
        .. Slug.From(text.Replace("'", "", StringComparison.Ordinal).Replace("’", "", StringComparison.Ordinal))
            .Split('-', StringSplitOptions.RemoveEmptyEntries).Select(Singular),
    ];

    private static string Singular(string word) =>
        word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) ? word[..^1] : word;

    /// <summary>The word itself where a name has it; else one that differs by a slip.</summary>
    private string Known(string word)
    {
        const int shortest = 4;
        if (word.Length < shortest || _byWord.Contains(word))
            return word;
        return _weights.Keys
            .Where(k => Math.Abs(k.Length - word.Length) <= 1 && k[0] == word[0] && k.Length >= shortest)
            .Where(k => BlockDistance.Between(k, word, 1) == 1)
            .Order(StringComparer.Ordinal).FirstOrDefault() ?? word;
    }

    private double Likeness(string[] one, string[] other)
    {
        double Weight(IEnumerable<string> words) => words.Sum(w => _weights.GetValueOrDefault(w, 1));
        return Weight(one.Intersect(other)) / Weight(one.Union(other));
    }
}
