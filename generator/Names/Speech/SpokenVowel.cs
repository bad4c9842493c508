namespace CareSheets.Names.Speech;

/// <summary>How the vowel of a syllable is spelt so that readers of English say it.</summary>
internal static class SpokenVowel
{
    public static string Of(LatinWord word, int index, bool isShort, int stressed)
    {
        var (syllable, isLast) = (word.Syllables[index], index == word.Syllables.Count - 1);
        var vowel = syllable.Vowel.Spelt;
        if (syllable.Vowel.IsDiphthong)
            return Diphthong(vowel, index == 0 && syllable.Onset.Count == 0);
        if (IsLastEs(word, index) && index != stressed)
            return "ee";
        if (syllable.IsClosed || isShort)
            return vowel == "y" ? "i" : vowel;
        if (index == stressed)
            return Long(vowel, syllable.Onset.Count == 0);
        if (isLast)
            return Final(vowel);
        var beforeVowel = word.Syllables[index + 1].Onset.Count == 0;
        return vowel switch
        {
            "e" or "i" or "y" when beforeVowel => "ee",
            "o" when beforeVowel => "oh",
            "u" => "oo",
            "y" => "i",
            _ => vowel,
        };
    }

    /// <summary>The -es at the end of a word, which is long.</summary>
    public static bool IsLastEs(LatinWord word, int index) =>
        !word.IsPersonal && index == word.Syllables.Count - 1 &&
        word.Syllables[index] is { Vowel.Spelt: "e", Coda: [{ Spelt: "s" }] };

    private static string Diphthong(string vowel, bool isFirst) => vowel switch
    {
        "ae" or "oe" or "ee" => "ee",
        "au" => "aw",
        "eu" => isFirst ? "yoo" : "oo",
        "oo" or "ue" => "oo",
        "ei" => "y",
        "oi" => "oy",
        "ou" => "oo",
        _ => "ay",
    };

    private static string Long(string vowel, bool standsAlone) => vowel switch
    {
        "a" => "ay",
        "e" => "ee",
        "i" or "y" => standsAlone ? "eye" : "y",
        "o" => "oh",
        _ => "oo",
    };

    private static string Final(string vowel) => vowel switch
    {
        "a" => "uh",
        "e" => "ee",
        "i" or "y" => "eye",
        "o" => "oh",
        _ => "oo",
    };
}
