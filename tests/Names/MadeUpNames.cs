using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.Tests.Names;

/// <summary>Names of Latin syllables, always the same ones, and lines with the slips that lists have.</summary>
internal static class MadeUpNames
{
    private static readonly string[] Syllables =
    [
        "ba", "co", "ry", "do", "ras", "pi", "sto", "gram", "la", "ne", "mi", "cha", "ro", "te", "tra", "gu", "le",
        "phy", "xan", "the", "os", "bri", "ki", "mo", "nu", "va", "se", "ti", "lu", "ar",
    ];

    private static readonly string[] Endings = ["us", "a", "um", "is", "ensis", "atus", "i", "ii"];

    /// <summary>Five species to a genus.</summary>
    public static IReadOnlyList<NamedSpecies> Species(int count)
    {
        var random = new Random(20261125);
        var names = new HashSet<string>();
        while (names.Count < count)
        {
            var genus = Word(random, 3 + random.Next(2));
            for (var i = 0; i < 5 && names.Count < count; i++)
                names.Add($"{char.ToUpperInvariant(genus[0])}{genus[1..]}us " +
                    Word(random, 2 + random.Next(2)) + Endings[random.Next(Endings.Length)]);
        }
        return
        [
            .. names.Select(n => ScientificName.Parse(n)!).Select(n => new NamedSpecies(n.Slug, n, [], [], [])),
        ];
    }

    /// <summary>A third as they are, the rest with one or two slips.</summary>
    public static IReadOnlyList<string> Lines(int names, int count)
    {
        var random = new Random(7);
        var species = Species(names);
        return
        [
            .. Enumerable.Range(0, count).Select(i => Enumerable.Range(0, i % 3).Aggregate(
                species[random.Next(species.Count)].Valid.ToString(), (text, _) => Slip(text, random))),
        ];
    }

    private static string Slip(string text, Random random)
    {
        var at = 1 + random.Next(text.Length - 2);
        return random.Next(3) switch
        {
            0 => text[..at] + text[at] + text[at..],
            1 => text[..at] + text[(at + 1)..],
            _ => text[..at] + text[at + 1] + text[at] + text[(at + 2)..],
        };
    }

    private static string Word(Random random, int syllables) =>
        string.Concat(Enumerable.Range(0, syllables).Select(_ => Syllables[random.Next(Syllables.Length)]));
}
