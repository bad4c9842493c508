namespace CareSheets.Names;

/// <summary>
/// Name of a species or subspecies in the binominal form of the ICZN Code (Art. 5): a genus with a
/// capital, one or two epithets without. Author and year are not part of it (Art. 51.1).
/// </summary>
public sealed record ScientificName
{
    private ScientificName(string genus, string epithet, string? subspecies)
    {
        Genus = genus;
        Epithet = epithet;
        Subspecies = subspecies;
    }

    public string Genus { get; }

    public string Epithet { get; }

    public string? Subspecies { get; }

    /// <summary>The name as a file name and address: <c>danio-rerio</c>.</summary>
    public string Slug => ToString().ToLowerInvariant().Replace(' ', '-');

    /// <summary>Nothing when the text is not two or three words of the right form.</summary>
    public static ScientificName? Parse(string text)
    {
        var words = text.Split(' ');
        return words.Length is 2 or 3 && IsGenus(words[0]) && words.Skip(1).All(IsEpithet)
            ? new ScientificName(words[0], words[1], words.Length == 3 ? words[2] : null)
            : null;
    }

    public override string ToString() =>
        Subspecies is null ? $"{Genus} {Epithet}" : $"{Genus} {Epithet} {Subspecies}";

    private static bool IsGenus(string word) =>
        word.Length >= 2 && char.IsAsciiLetterUpper(word[0]) && word.Skip(1).All(char.IsAsciiLetterLower);

    private static bool IsEpithet(string word) =>
        word.Length >= 2 && word.All(c => char.IsAsciiLetterLower(c) || c == '-') &&
        char.IsAsciiLetterLower(word[0]) && char.IsAsciiLetterLower(word[^1]);
}
