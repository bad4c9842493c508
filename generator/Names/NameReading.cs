namespace CareSheets.Names;

/// <summary>
/// A scientific name as a person wrote it, taken apart. Signs of open nomenclature (cf., aff., sp., ?) are
/// no part of a name even where they stand inside it (ICZN Code, 4th ed. 1999, Art. 5.3).
/// </summary>
public sealed record NameReading
{
    /// <summary>As written, with the capital it should have; empty where no genus was found.</summary>
    public string Genus { get; init; } = "";

    /// <summary>The genus is shortened, as in <c>P. innesi</c>; <see cref="Genus"/> holds the rest of it.</summary>
    public bool IsAbbreviated { get; init; }

    /// <summary>Between genus and epithet in parentheses (Art. 6.1), and no word of the name.</summary>
    public string? Subgenus { get; init; }

    /// <summary>None, one, or two with that of a subspecies.</summary>
    public IReadOnlyList<string> Epithets { get; init; } = [];

    /// <summary>cf., aff., sp. and the like, in the order written, each as the trade writes it.</summary>
    public IReadOnlyList<string> Qualifiers { get; init; } = [];

    /// <summary>Stands before which epithet, by index, for each of <see cref="Qualifiers"/>.</summary>
    public IReadOnlyList<int> QualifierPlaces { get; init; } = [];

    /// <summary>A hybrid sign or the word hybrid stands in it.</summary>
    public bool IsHybrid { get; init; }

    /// <summary>Strain or place in quotes, without them.</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>Codes of the trade in their usual form: L046, LDA022, C121, CW010.</summary>
    public IReadOnlyList<string> TradeCodes { get; init; } = [];

    /// <summary>Author and year as written, with their parentheses; empty where none is given.</summary>
    public string Authorship { get; init; } = "";

    public int? Year { get; init; }

    /// <summary>Words that found no place.</summary>
    public string Rest { get; init; } = "";

    public IReadOnlyList<NameProblem> Problems { get; init; } = [];

    /// <summary>
    /// The bare name, where it is one: no shortened genus, at least one epithet. Marks are taken off
    /// letters, with an e for those of German vowels (Art. 32.5.2.1).
    /// </summary>
    public ScientificName? Name => IsAbbreviated || Epithets.Count == 0
        ? null
        : ScientificName.Parse(Plain(Genus) + " " + string.Join(' ', Epithets.Select(Plain)));

    /// <summary>The writer is sure of the name: no qualifier, no hybrid.</summary>
    public bool IsPlain => Qualifiers.Count == 0 && !IsHybrid;

    private static string Plain(string word)
    {
        if (word.All(c => char.IsAsciiLetter(c) || c == '-'))
            return word;
        var plain = Slug.From(Matching.SpellingKey.WithoutUmlauts(word.ToLowerInvariant()));
        return plain.Length > 0 && char.IsUpper(word[0]) ? char.ToUpperInvariant(plain[0]) + plain[1..] : plain;
    }
}
