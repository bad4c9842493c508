using CareSheets.Names;

namespace CareSheets.Collection;

/// <summary>What may be meant by an evidence that is neither a fixed word nor a key of references.yaml.</summary>
internal static class EvidenceGuess
{
    private static readonly string[] Words = ["common practice", "from memory", "seen here", "from relatives"];

    public static string Hint(string written, IReadOnlySet<string> works)
    {
        var fixedWords = $"Evidence is {string.Join(", ", Words)} or a key of references.yaml.";
        return EditDistance.Nearest(written, Words.Concat(works)) is { } nearest
            ? $"Did you mean {nearest}? {fixedWords}" : fixedWords;
    }

    /// <summary>A work that no key is near to is most often one that nobody has written down yet.</summary>
    public static string OfAWork(string key, IReadOnlySet<string> works) =>
        EditDistance.Nearest(key, works) is { } nearest
        ? $"Did you mean {nearest}? If it is another work, add it to references.yaml."
        : "Add the work to references.yaml, or check how its key is spelt there.";
}
