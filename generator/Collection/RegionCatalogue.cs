using System.Collections.Frozen;

namespace CareSheets.Collection;

/// <summary>Parts of the Earth that countries lie in, from regions.csv, which names its origin.</summary>
public static class RegionCatalogue
{
    private static readonly FrozenDictionary<string, IReadOnlyList<string>> ByCode = Read().ToFrozenDictionary();

    /// <summary>
    /// The regions of a country of ISO 3166-1 from the largest to the smallest, such as Africa, Sub-Saharan
    /// Africa, Western Africa; none for Antarctica and for codes that are not assigned.
    /// </summary>
    public static IReadOnlyList<string> Of(string code) => ByCode.GetValueOrDefault(code, []);

    private static IEnumerable<KeyValuePair<string, IReadOnlyList<string>>> Read()
    {
        using var stream = typeof(RegionCatalogue).Assembly.GetManifestResourceStream("regions.csv")
            ?? throw new InvalidOperationException("regions.csv is missing from the program.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#'))
                continue;
            var parts = line.Split(',');
            foreach (var code in parts[1].Split(' '))
                yield return new(code, parts[0].Split(';'));
        }
    }
}
