namespace CareSheets.Names.Matching;

/// <summary>
/// Other readings of a word whose letters were misread, by eye or by a scanner: rn and m, cl and d, 0 and
/// o, 1, I and l, 5 and s (common practice of proof-readers, no source).
/// </summary>
internal static class Misreading
{
    private static readonly (string Read, string Meant)[] Pairs =
    [
        ("rn", "m"), ("m", "rn"), ("cl", "d"), ("d", "cl"), ("vv", "w"), ("li", "h"), ("h", "li"), ("ii", "u"),
        ("u", "ii"), ("nn", "m"), ("c", "e"), ("e", "c"), ("l", "i"), ("i", "l"), ("n", "u"), ("u", "n"),
    ];

    /// <summary>The word with digits as letters, and that with one place read otherwise.</summary>
    public static IEnumerable<string> Of(string word)
    {
        var letters = Letters(word);
        if (letters != word)
            yield return letters;
        foreach (var (read, meant) in Pairs)
        {
            for (var at = letters.IndexOf(read, StringComparison.Ordinal); at >= 0;
                at = letters.IndexOf(read, at + 1, StringComparison.Ordinal))
                yield return letters[..at] + meant + letters[(at + read.Length)..];
        }
    }

    /// <summary>Digits inside a word stand for the letters they look like.</summary>
    public static string Letters(string word) => word.Any(char.IsAsciiLetter)
        ? word.Replace('0', 'o').Replace('1', 'l').Replace('5', 's').Replace('|', 'l')
        : word;
}
