using CareSheets.Arrivals;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>What people have answered for one supplier, by the text that names the fish.</summary>
public sealed class RememberedAnswers(IEnumerable<SupplierAnswer> answers)
{
    private readonly Dictionary<string, SupplierAnswer> _bySaid =
        answers.GroupBy(a => Key(a.Said)).ToDictionary(g => g.Key, g => g.Last());

    /// <summary>By what was said, so that the file is the same however the answers came.</summary>
    public IReadOnlyList<SupplierAnswer> All =>
        [.. _bySaid.Values.OrderBy(a => Key(a.Said), StringComparer.Ordinal)];

    public string? Find(PackedLine line) => _bySaid.GetValueOrDefault(Key(Asked(line)))?.Entry;

    /// <summary>A later answer takes the place of an earlier one.</summary>
    public void Add(SupplierAnswer answer) => _bySaid[Key(answer.Said)] = answer;

    /// <summary>The name with what stood beside it, for a wrong label is told by the two together.</summary>
    public static string Asked(PackedLine line) =>
        line.Beside.Length > 0 ? $"{line.NameText} ({line.Beside})" : line.NameText;

    private static string Key(string said) => Slug.From(said);
}
