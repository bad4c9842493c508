using System.Numerics;

namespace CareSheets.Names.Matching;

/// <summary>One name of a species, ready for comparison.</summary>
internal sealed record IndexedName(NamedSpecies Species, ScientificName Name, bool IsValid)
{
    public SoundedWord Epithet { get; } = SoundedWord.Epithet(Name.Subspecies ?? Name.Epithet);

    public uint Letters { get; } = LettersOf((Name.Subspecies ?? Name.Epithet).ToLowerInvariant());

    /// <summary>One bit for each letter that a word has.</summary>
    public static uint LettersOf(string word) =>
        word.Where(char.IsAsciiLetterLower).Aggregate(0u, (bits, c) => bits | 1u << (c - 'a'));

    /// <summary>Each edit changes at most two of the letters that occur at all: a cheap lower bound.</summary>
    public static bool CanBeWithin(int most, string a, uint lettersOfA, string b, uint lettersOfB) =>
        Math.Abs(a.Length - b.Length) <= most &&
        BitOperations.PopCount(lettersOfA ^ lettersOfB) <= 2 * most;
}
