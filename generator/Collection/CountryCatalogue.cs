using System.Collections.Frozen;

namespace CareSheets.Collection;

/// <summary>
/// The countries of ISO 3166-1 from countries.csv and their continents from continents.csv, which name their
/// origin. User-assigned codes such as XK are not part of the standard and not in it.
/// </summary>
public static class CountryCatalogue
{
    private static readonly FrozenDictionary<string, Country> ByCode = Read().ToFrozenDictionary(c => c.Code);

    public static IEnumerable<Country> All => ByCode.Values.OrderBy(c => c.Code, StringComparer.Ordinal);

    public static Country? Find(string code) => ByCode.GetValueOrDefault(code);

    /// <summary>The country of an English name, as people write it, or nothing.</summary>
    public static Country? Named(string name) => All.FirstOrDefault(c =>
        string.Equals(c.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<Country> Read()
    {
        var continents = Rows("continents.csv")
            .SelectMany(row => row.Second.Split(' ').Select(code => (Code: code, Continent: row.First)))
            .ToDictionary(c => c.Code, c => c.Continent);
        return Rows("countries.csv").Select(row => new Country(row.First, row.Second.Trim('"'), continents[row.First]));
    }

    /// <summary>The lines of a file that comes with the program, each parted at its first comma.</summary>
    private static IEnumerable<(string First, string Second)> Rows(string name)
    {
        using var stream = typeof(CountryCatalogue).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is missing from the program.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            var comma = line.IndexOf(',', StringComparison.Ordinal);
            if (comma > 0 && line[0] != '#')
                yield return (line[..comma], line[(comma + 1)..]);
        }
    }
}
