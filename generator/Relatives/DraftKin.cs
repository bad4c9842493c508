using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>The near relatives that a draft's words are taken from.</summary>
/// <param name="Rank"><c>genus</c> or <c>family</c>.</param>
internal sealed record DraftKin(string Rank, IReadOnlyList<Entry> Entries)
{
    private const int MostNames = 3;

    public string Who => DraftText.Who([.. Entries.Select(e => e.ScientificName.Value.ToString())], MostNames, Rank);

    /// <summary>What most of them have; of equally many, the first by name.</summary>
    public DraftValue Common(string path, Func<Entry, string> word)
    {
        var most = Entries.GroupBy(word).OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key, StringComparer.Ordinal).First();
        return new DraftValue(path, most.Key, $"{most.Count()} of {Entries.Count} among {Who}");
    }

    /// <param name="graver">All words, from harmless to grave.</param>
    public DraftValue Gravest(string path, Func<Entry, string> word, IReadOnlyList<string> graver)
    {
        var gravest = Entries.Select(word).MaxBy(w => graver.ToList().IndexOf(w))!;
        return new DraftValue(path, gravest, $"the careful end among {Who}");
    }

    public DraftValue Largest(string path, Func<Entry, StatedRange> size)
    {
        var largest = Entries.Select(size).MaxBy(s => s.High ?? s.Low ?? 0)!;
        var text = DraftText.Amount(largest.Dimension, largest.High ?? largest.Low ?? 0);
        return new DraftValue(path, text, $"the largest among {Who}");
    }

    public DraftValue All(string path, Func<Entry, IEnumerable<string>> words) => new(
        path,
        $"[{string.Join(", ", Entries.SelectMany(words).Distinct().Order(StringComparer.Ordinal))}]",
        $"all that was said of {Who}");
}
