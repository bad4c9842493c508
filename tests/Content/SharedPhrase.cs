namespace CareSheets.Tests.Content;

/// <summary>A run of words that stands in two places of the collection.</summary>
internal sealed record SharedPhrase(string Words, string First, string Second)
{
    /// <summary>Every run of exactly so many words that was there before, in this text or another.</summary>
    public static IReadOnlyList<SharedPhrase> Find(IEnumerable<ProseWords> texts, int length)
    {
        var owners = new Dictionary<string, string>();
        var shared = new List<SharedPhrase>();
        foreach (var text in texts)
        {
            foreach (var run in Runs(text.Words, length))
            {
                if (!owners.TryAdd(run, text.Name))
                    shared.Add(new SharedPhrase(run, owners[run], text.Name));
            }
        }
        return shared;
    }

    private static IEnumerable<string> Runs(IReadOnlyList<string> words, int length) =>
        Enumerable.Range(0, Math.Max(0, words.Count - length + 1))
            .Select(at => string.Join(' ', words.Skip(at).Take(length)));
}
