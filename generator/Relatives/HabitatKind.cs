using CareSheets.Names;

namespace CareSheets.Relatives;

/// <summary>A kind of water, and the words by which an entry's habitat is known to be of it.</summary>
internal sealed record HabitatKind(string Name, IReadOnlyList<string> Words)
{
    /// <summary>The kinds of habitats.csv, which names its origin.</summary>
    public static IReadOnlyList<HabitatKind> All { get; } = Read();

    public bool IsOf(IEnumerable<string> habitats) =>
        habitats.Any(h => Words.Any(w => h.Contains(w, StringComparison.OrdinalIgnoreCase)));

    private static List<HabitatKind> Read() =>
    [
        .. DataFile.Rows("habitats.csv").GroupBy(row => row[1], row => row[0])
            .Select(g => new HabitatKind(g.Key, [.. g])),
    ];
}
