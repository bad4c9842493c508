namespace CareSheets.Names.Speech;

/// <summary>
/// A word in syllables with its stress, by the rules of Latin: words of two syllables are stressed on
/// the first; longer ones on the second-last if that is long, by nature or closed by consonants, else on
/// the third-last (Allen and Greenough, New Latin Grammar, 1903, sections 7, 11 and 12; cited from memory).
/// </summary>
internal sealed class LatinWord
{
    private LatinWord(IReadOnlyList<LatinSyllable> syllables, int stressed, bool isGuess)
    {
        Syllables = syllables;
        Stressed = stressed;
        IsGuess = isGuess;
    }

    public IReadOnlyList<LatinSyllable> Syllables { get; }

    /// <summary>Part of a person's name: no Latin ending to be spoken as one.</summary>
    public bool IsPersonal { get; private init; }

    /// <summary>Index of the stressed syllable.</summary>
    public int Stressed { get; }

    /// <summary>The quantity of the second-last vowel is not known; it was taken for short.</summary>
    public bool IsGuess { get; }

    public bool IsStressOnThirdLast => Syllables.Count - Stressed == 3;

    public static LatinWord Of(string word, bool isPersonal = false)
    {
        var syllables = Split(LatinLetters.Of(word, isPersonal));
        if (syllables.Count < 3)
            return new LatinWord(syllables, 0, false) { IsPersonal = isPersonal };
        var (penult, last) = (syllables[^2], syllables[^1]);
        var isHiatus = !penult.IsClosed && last.Onset.Count == 0;
        bool? isLong = penult.Vowel.IsDiphthong || penult.IsClosed ? true
            : isHiatus ? false
            : LatinQuantities.IsPenultLong(word);
        var stressed = syllables.Count - (isLong == true ? 2 : 3);
        return new LatinWord(syllables, stressed, isLong is null) { IsPersonal = isPersonal };
    }

    /// <summary>A stop with l or r goes on to the next syllable; of other consonants the last one does.</summary>
    private static List<LatinSyllable> Split(IReadOnlyList<LatinLetter> letters)
    {
        var vowels = Enumerable.Range(0, letters.Count).Where(i => letters[i].IsVowel).ToList();
        var syllables = new List<LatinSyllable>();
        var from = 0;
        for (var v = 0; v < vowels.Count; v++)
        {
            var end = v + 1 == vowels.Count ? letters.Count : Boundary(letters, vowels[v], vowels[v + 1]);
            syllables.Add(new LatinSyllable(
                [.. letters.Take(vowels[v]).Skip(from)], letters[vowels[v]],
                [.. letters.Take(end).Skip(vowels[v] + 1)]));
            from = end;
        }
        return syllables;
    }

    private static int Boundary(IReadOnlyList<LatinLetter> letters, int vowel, int nextVowel)
    {
        var between = nextVowel - vowel - 1;
        if (between == 0)
            return nextVowel;
        var last = letters[nextVowel - 1];
        if (last.Spelt == "x")
            return nextVowel;
        return between > 1 && last.IsLiquid && letters[nextVowel - 2].IsStop ? nextVowel - 2 : nextVowel - 1;
    }
}
