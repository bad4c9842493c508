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
}
