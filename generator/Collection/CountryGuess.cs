using CareSheets.Names;

namespace CareSheets.Collection;

/// <summary>Which country may be meant by what is no code: its name, part of it, an older one, lower case.</summary>
internal static class CountryGuess
{
    /// <summary>Names and abbreviations that ISO 3166-1 does not have, from memory.</summary>
    private static readonly Dictionary<string, string> Other = new(StringComparer.OrdinalIgnoreCase)
    {
        ["UK"] = "GB",
        ["Great Britain"] = "GB",
        ["England"] = "GB",
        ["USA"] = "US",
        ["Burma"] = "MM",
        ["Siam"] = "TH",
        ["Zaire"] = "CD",
        ["Ivory Coast"] = "CI",
        ["Cape Verde"] = "CV",
    };

    /// <summary>A hint, with the code wherever one can be guessed.</summary>
    public static string Hint(string written)
    {
        var text = written.Trim();
        var found = Guess(text).Select(c => $"{c.Code} ({c.Name})").ToList();
        return found.Count is > 0 and <= 3
            ? $"Write {string.Join(" or ", found)}."
            : "Write the two letters that ISO 3166-1 has for the country, as in MM for Myanmar.";
    }

    private static IReadOnlyList<Country> Guess(string text)
    {
        if (CountryCatalogue.Find(text.ToUpperInvariant()) is { } small)
            return [small];
        if (Other.TryGetValue(text, out var code))
            return [CountryCatalogue.Find(code)!];
        if (CountryCatalogue.Named(text) is { } named)
            return [named];
        if (text.Length < 4)
            return [];
        var parts = CountryCatalogue.All.Where(c => Words(text).All(Words(c.Name).Contains)).ToList();
        return parts.Count > 0 ? parts
            : EditDistance.Nearest(text, CountryCatalogue.All.Select(c => c.Name).Concat(LongWords)) is { } nearest
                ? [.. CountryCatalogue.All.Where(c => c.Name == nearest || c.Name.Split(' ').Contains(nearest))] : [];
    }

    private static IEnumerable<string> LongWords =>
        CountryCatalogue.All.SelectMany(c => c.Name.Split(' ')).Where(w => w.Length > 4 && char.IsUpper(w[0]));

    private static HashSet<string> Words(string text) =>
        [.. text.ToLowerInvariant().Split([' ', ',', '-', '\'', '(', ')'], StringSplitOptions.RemoveEmptyEntries)];
}
