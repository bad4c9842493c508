namespace CareSheets.Relatives;

/// <summary>A kind of water, and the words by which an entry's habitat is known to be of it.</summary>
internal sealed record HabitatKind(string Name, IReadOnlyList<string> Words)
{
    /// <summary>The kinds of habitats.csv, which names its origin.</summary>
    public static IReadOnlyList<HabitatKind> All { get; } = Read();

    public bool IsOf(IEnumerable<string> habitats) =>
        habitats.Any(h => Words.Any(w => h.Contains(w, StringComparison.OrdinalIgnoreCase)));

    private static List<HabitatKind> Read()
    {
        using var stream = typeof(HabitatKind).Assembly.GetManifestResourceStream("habitats.csv")
            ?? throw new InvalidOperationException("habitats.csv is missing from the program.");
        using var reader = new StreamReader(stream);
        var rows = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Trim().Split(','));
        return [.. rows.GroupBy(r => r[1], r => r[0]).Select(g => new HabitatKind(g.Key, [.. g]))];
    }
}
