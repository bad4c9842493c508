using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// Words that mean another fish: names of the other entries, and words such as "tetras" or "its
/// relatives" that no name of this entry holds.
/// </summary>
internal sealed class SpeciesMentions
{
    private static readonly HashSet<string> FishWords = Cues.Of(
        "tetra barb danio rasbora cichlid discus angelfish guppy gourami catfish cory corydoras loach " +
        "pleco molly platy swordtail goldfish puffer betta fighter shrimp snail pike relative cousin " +
        "congener neighbour other alike double rainbowfish killifish carp minnow ram piranha oscar " +
        "shark eel bichir ray perch species squeaker blue-eye arowana lookalike kin");

    /// <summary>Before "others": they are of its own kind then, as a group is told.</summary>
    private static readonly HashSet<string> Counts = Cues.Of(
        "least two three four five six seven eight nine ten each");

    private static readonly HashSet<string> Wants = Cues.Of("want need like prefer ask require enjoy demand");

    /// <summary>With these a sentence goes on about the species itself.</summary>
    private static readonly HashSet<string> OwnPlurals = Cues.Of(
        "adults males females groups shoals schools parties pairs trios tanks these others youngsters juveniles");

    private static readonly Dictionary<string, string> Plurals = new()
    {
        ["guppies"] = "guppy",
        ["cories"] = "cory",
        ["mollies"] = "molly",
        ["platies"] = "platy",
        ["loaches"] = "loach",
    };

    private readonly SpeciesNames _names;
    private readonly Entry _entry;
    private readonly HashSet<string> _general;
    private readonly HashSet<string> _own;

    public SpeciesMentions(SpeciesNames names, Entry entry)
    {
        (_names, _entry) = (names, entry);
        var own = entry.VernacularNames.Select(n => SpeciesNames.Words(n.Value)).ToList();
        _own = [.. own.Select(words => string.Join(' ', words))];
        var words = own.SelectMany(w => w).Append(entry.Genus.ToLowerInvariant()).ToHashSet();
        _general = [.. FishWords.Where(w => !words.Contains(w) && !words.Contains(w + "s"))];
    }

    /// <summary>Which tokens belong to words that mean another fish.</summary>
    public bool[] In(TokenRun run, ProseText text)
    {
        var marked = new bool[run.Count];
        foreach (var (start, end) in text.Linked)
            Mark(run, marked, start, end);
        for (var i = 0; i < run.Count; i++)
        {
            if (IsGeneral(run, i) || IsPluralSubject(run, i))
                marked[i] = true;
            foreach (var name in _names.BeginningWith(run[i].Text).Where(IsAnother))
                Array.Fill(marked, true, i, Math.Min(name.LengthAt(run, i), run.Count - i));
        }
        return marked;
    }

    /// <summary>
    /// "Cardinals want ten": fishes in the plural with which a sentence begins, known by a word of another's name or by
    /// what they want.
    /// </summary>
    private bool IsPluralSubject(TokenRun run, int at)
    {
        var word = run[at].Text;
        return (at == 0 || run[at - 1].Kind == TokenKind.Stop) && word.Length > 4 && word.EndsWith('s') &&
            !OwnPlurals.Contains(word) && !_own.Any(name => name.Split(' ').Contains(word[..^1])) &&
            (Wants.Contains(run[at + 1].Text) || _names.BeginningWith(word[..^1]).Any(IsAnother));
    }

    private bool IsGeneral(TokenRun run, int at)
    {
        var word = run[at].Text;
        if (word is "other" or "others" && Counts.Contains(run[at - 1].Text))
            return false;
        if (word == "species" && run[at - 1].Text is "this" or "the")
            return false;
        return _general.Contains(word) || (word.EndsWith('s') && _general.Contains(word[..^1])) ||
            (Plurals.TryGetValue(word, out var one) && _general.Contains(one));
    }

    /// <summary>A name of another entry; its genus alone only where it is not this one's too.</summary>
    private bool IsAnother(SpeciesName name) =>
        name.Entry != _entry.Name && !(name.Words.Count == 1 && name.Genus == _entry.Genus) &&
        !_own.Contains(string.Join(' ', name.Words));

    private static void Mark(TokenRun run, bool[] marked, int start, int end)
    {
        var (low, high) = (0, run.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = run[middle].Start < start ? (middle + 1, high) : (low, middle);
        }
        for (; low < run.Count && run[low].Start < end; low++)
            marked[low] = true;
    }
}
