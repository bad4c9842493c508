namespace CareSheets.Names.Speech;

/// <summary>
/// One sound of a word as it is spelt: a vowel or diphthong, or a consonant with its h. Where the
/// English tradition speaks a consonant otherwise than it is spelt, <see cref="Sound"/> says how.
/// </summary>
internal readonly record struct LatinLetter(string Spelt, string Sound, bool IsVowel)
{
    public bool IsDiphthong => IsVowel && Spelt.Length > 1;

    /// <summary>A stop, which with l or r after it does not close the syllable in front.</summary>
    public bool IsStop => Spelt is "b" or "c" or "d" or "f" or "g" or "p" or "t" or "k" or "ch" or "ph" or "th";

    public bool IsLiquid => Spelt is "l" or "r" or "rh";
}
