using System.Collections.Frozen;

namespace CareSheets.Collection;

/// <summary>
/// The countries of ISO 3166-1 from countries.csv, which names its origin. User-assigned codes
/// such as XK are not part of the standard and not in it.
/// </summary>
public static class CountryCatalogue
{
    private static readonly FrozenDictionary<string, Country> ByCode = Read().ToFrozenDictionary(c => c.Code);

    public static IEnumerable<Country> All => ByCode.Values.OrderBy(c => c.Code, StringComparer.Ordinal);

    public static Country? Find(string code) => ByCode.GetValueOrDefault(code);

    private static IEnumerable<Country> Read()
    {
        using var stream = typeof(CountryCatalogue).Assembly.GetManifestResourceStream("countries.csv")
            ?? throw new InvalidOperationException("countries.csv is missing from the program.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            var comma = line.IndexOf(',', StringComparison.Ordinal);
            if (comma == 2)
                yield return new Country(line[..comma], line[(comma + 1)..].Trim('"'));
        }
    }
}
