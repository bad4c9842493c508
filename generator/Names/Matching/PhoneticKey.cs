using System.Text;
using System.Text.RegularExpressions;

namespace CareSheets.Names.Matching;

/// <summary>
/// Words of names that sound alike to a Latinist have the same key: the near match of Rees 2014 (PLoS
/// ONE 9(9): e107510), by the rules of its form of 2007.
/// </summary>
internal static partial class PhoneticKey
{
    private static readonly (string From, string To)[] Beginnings =
    [
        ("AE", "E"), ("CN", "N"), ("CT", "T"), ("CZ", "C"), ("DJ", "J"), ("EA", "E"), ("EU", "U"), ("GN", "N"),
        ("KN", "N"), ("MC", "MAC"), ("MN", "N"), ("OE", "E"), ("QU", "Q"), ("PS", "S"), ("PT", "T"), ("TS", "S"),
        ("WR", "R"), ("X", "Z"),
    ];

    public static string OfGenus(string word) => Key(word);

    /// <summary>Endings that only tell the gender are made alike.</summary>
    public static string OfEpithet(string word)
    {
        var key = Key(word);
        return key.Length > 4 && key[^2..] is ("IS" or "IM" or "AS") ? key[..^2] + "A" : key;
    }

    private static string Key(string word)
    {
        var text = LatinLetters(word);
        if (text.Length == 0)
            return "";
        var beginning = Beginnings.FirstOrDefault(
            b => text.StartsWith(b.From, StringComparison.Ordinal), (From: "", To: ""));
        text = beginning.To + text[beginning.From.Length..];
        var rest = text[1..].Replace("AE", "I").Replace("IA", "A").Replace("OE", "I").Replace("OI", "A")
            .Replace("SC", "S").Replace("H", "");
        var key = new StringBuilder(text[..1]);
        foreach (var c in rest.Select(Sound))
        {
            if (key[^1] != c)
                key.Append(c);
        }
        return key.ToString();
    }

    private static char Sound(char c) => c switch
    {
        'E' or 'U' or 'Y' => 'I',
        'O' => 'A',
        'K' => 'C',
        'Z' => 'S',
        _ => c,
    };

    private static string LatinLetters(string word) => NotLetters().Replace(
        Slug.From(word.Replace("æ", "ae").Replace("œ", "oe").Replace("Æ", "Ae").Replace("Œ", "Oe")), "")
        .ToUpperInvariant();

    [GeneratedRegex("[^a-z]")]
    private static partial Regex NotLetters();
}
