namespace CareSheets.Rules.Wording;

/// <summary>
/// A turn of phrase to look for: its words stand one after another in a clause. <c>safe/harmless</c> is either of the
/// two words, and <c>..</c> leaves room for up to four words that do not matter, none of them a "not".
/// A last <c>|</c> is the end of the clause.
/// </summary>
public sealed class SpokenPhrase
{
    private const int WidestGap = 4;

    private static readonly HashSet<string> Nots = ["not", "never", "no", "nobody", "nothing", "cannot"];

    private readonly IReadOnlyList<Part> _parts;

    private readonly bool _endsThere;

    private SpokenPhrase(IReadOnlyList<Part> parts, bool endsThere) => (_parts, _endsThere) = (parts, endsThere);

    public static SpokenPhrase Of(string phrase)
    {
        var (parts, isLoose) = (new List<Part>(), false);
        foreach (var written in phrase.ToLowerInvariant().Split(
            [' ', '-'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (written is not (".." or "|"))
                parts.Add(new Part(written.Split('/', StringSplitOptions.RemoveEmptyEntries), isLoose));
            isLoose = written == "..";
        }
        return new SpokenPhrase(parts, phrase.EndsWith('|'));
    }

    public static IReadOnlyList<SpokenPhrase> All(params string[] phrases) => [.. phrases.Select(Of)];

    /// <summary>Whether a text of these words may hold it.</summary>
    public bool MayStandAmong(IReadOnlySet<string> words) =>
        _parts.Count > 0 && _parts.All(part => part.Words.Any(words.Contains));

    /// <summary>Every place of a clause at which it begins, each with its nearest end.</summary>
    internal IEnumerable<Said> In(SaidClause clause)
    {
        for (var at = 0; at < clause.Words.Count; at++)
        {
            if (End(clause, at, 0) is { } end)
                yield return new Said(clause, at, end - at);
        }
    }

    /// <summary>One past its last word, where the part numbered <paramref name="next"/> begins here.</summary>
    private int? End(SaidClause clause, int at, int next)
    {
        if (next == _parts.Count)
            return !_endsThere || at == clause.Words.Count ? at : null;
        var last = at + (_parts[next].IsLoose ? WidestGap : 0);
        for (var here = at; here <= last && here < clause.Words.Count; here++)
        {
            if (_parts[next].Words.Contains(clause[here]) && End(clause, here + 1, next + 1) is { } end)
                return end;
            if (Nots.Contains(clause[here]))
                return null;
        }
        return null;
    }

    private sealed record Part(IReadOnlyList<string> Words, bool IsLoose);
}
