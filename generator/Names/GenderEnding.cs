namespace CareSheets.Names;

/// <summary>
/// Endings of epithets that are adjectives agree in gender with the genus (ICZN Code, 4th ed. 1999,
/// Art. 31.2, 34.2). Decided by two small tables, of genera and of adjectives; where either is silent,
/// so is this.
/// </summary>
public static class GenderEnding
{
    private static readonly IReadOnlyList<string[]> Adjectives =
        [.. DataFile.Rows("adjectives.csv").Select(row => row[1..]).OrderByDescending(row => row[0].Length)];

    /// <summary>The epithet as the genus asks for it; nothing where the tables can't tell.</summary>
    public static string? For(string genus, string epithet, GenusTable genera)
    {
        if (genera.Find(genus)?.Gender is not { } gender)
            return null;
        foreach (var forms in Adjectives)
        {
            if (forms.FirstOrDefault(f => epithet.EndsWith(f, StringComparison.Ordinal)) is { } form)
                return epithet[..^form.Length] + forms[(int)gender];
        }
        return null;
    }

    /// <summary>The epithet as it is where it is an adjective of no known kind or the gender is not known.</summary>
    public static string Agreeing(string genus, string epithet, GenusTable genera) =>
        For(genus, epithet, genera) ?? epithet;
}
