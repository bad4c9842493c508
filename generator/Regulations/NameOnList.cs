namespace CareSheets.Regulations;

/// <summary>
/// Whether two ways of writing a name mean one taxon. Lists are old and spell as their day did, so
/// endings that follow the gender of the genus, and one or two letters i at the end, make no
/// difference (ICZN Code, Arts 31.2, 33.4, 34.2). A wrong match asks a person; a missed one does not.
/// </summary>
internal static class NameOnList
{
    private static readonly string[] Endings = ["us", "um", "is", "ii", "i", "e", "a"];

    public static bool IsGenus(AskedName asked, string genus) =>
        string.Equals(asked.Genus, genus, StringComparison.OrdinalIgnoreCase);

    /// <param name="asked">The name asked for.</param>
    /// <param name="listed">Genus and epithet as the list writes them.</param>
    public static bool IsSpecies(AskedName asked, string listed)
    {
        var words = listed.Split(' ');
        return words.Length >= 2 && IsGenus(asked, words[0]) && asked.Epithet is { } epithet &&
            Stem(epithet) == Stem(words[1]);
    }

    /// <summary>Whether a listed name is a genus or a species that means this one.</summary>
    public static bool Is(AskedName asked, string listed) =>
        listed.Contains(' ', StringComparison.Ordinal) ? IsSpecies(asked, listed) : IsGenus(asked, listed);

    private static string Stem(string epithet)
    {
        var plain = epithet.ToLowerInvariant();
        var ending = Endings.FirstOrDefault(e =>
            plain.Length > e.Length + 2 && plain.EndsWith(e, StringComparison.Ordinal));
        return ending is null ? plain : plain[..^ending.Length];
    }
}
