using System.Text.RegularExpressions;

namespace CareSheets.Names.Matching;

/// <summary>
/// Epithets that the Code takes for one word have one key. Variant spellings are those of Art. 58 (ae, oe
/// and e; ei, i and y; c and k; h or none after a consonant; single or double letters; c or none before t;
/// f and ph; ch and c; th and t; -i and -ii, -ae and -iae, -orum and -iorum, -arum and -iarum), which make
/// homonyms within a genus, so that at most one of them can be valid there (Art. 53.3); German vowels with
/// and without e (Art. 32.5.2.1); and the endings of the three genders (Art. 34.2). Articles are
/// cited from memory of the 4th edition, 1999. Connecting vowels (Art. 58.10) are left out.
/// </summary>
internal static partial class SpellingKey
{
    /// <summary>Shorter words have too little left without their ending.</summary>
    private const int Shortest = 4;

    private static readonly (string Ending, string To)[] Endings =
    [
        ("iorum", "|o"), ("orum", "|o"), ("iarum", "|r"), ("arum", "|r"), ("iae", "|e"), ("ae", "|e"),
        ("ii", "|i"), ("i", "|i"), ("rum", "er"), ("ra", "er"), ("us", ""), ("um", ""), ("is", ""), ("os", ""),
        ("on", ""), ("a", ""), ("e", ""),
    ];

    public static string Of(string epithet)
    {
        var word = Slug.From(WithoutUmlauts(epithet.ToLowerInvariant()));
        if (word.Length < Shortest)
            return word;
        var (ending, to) = Endings.FirstOrDefault(
            e => word.EndsWith(e.Ending, StringComparison.Ordinal), (Ending: "", To: ""));
        var stem = word[..^ending.Length];
        foreach (var (from, one) in Variants)
            stem = stem.Replace(from, one, StringComparison.Ordinal);
        return Doubled().Replace(stem, "$1") + to;
    }

    /// <summary>In this order: ph before h, ei before i.</summary>
    private static readonly (string, string)[] Variants =
    [
        ("ue", "u"), ("ae", "e"), ("oe", "e"), ("ei", "i"), ("y", "i"), ("j", "i"), ("ph", "f"), ("k", "c"),
        ("ch", "c"), ("th", "t"), ("rh", "r"), ("ct", "t"),
    ];

    /// <summary>Of a word in small letters.</summary>
    public static string WithoutUmlauts(string word) =>
        word.Replace("ä", "ae").Replace("ö", "oe").Replace("ü", "ue").Replace("æ", "ae").Replace("œ", "oe");

    [GeneratedRegex(@"([^aeiouy])\1+")]
    private static partial Regex Doubled();
}
