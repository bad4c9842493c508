using System.Text;

namespace CareSheets.Names.Speech;

/// <summary>One word of a name as it is said: syllables with hyphens, the stressed one in capitals.</summary>
internal sealed record SpokenWord(string Text, bool IsGuess)
{
    /// <summary>Genitives, which an epithet made from a person's name has (ICZN Art. 31.1; from memory).</summary>
    private static readonly string[] Genitives = ["i", "ae", "orum", "arum"];

    /// <summary>
    /// Epithets made from a person's name keep the person's stress and sounds (from memory; no rule of the Code), so
    /// what stands before the ending -i or -ii is spoken and stressed as a word of its own, unless two
    /// consonants before the ending draw the stress to them. But no spelling tells how a person is called, nor
    /// whether a genitive is of a person at all, so each of them is a guess until somebody approves it.
    /// </summary>
    public static SpokenWord Of(string word)
    {
        var whole = LatinWord.Of(word.ToLowerInvariant(), isPersonal: false);
        var isOfSomebody = char.IsLower(word[0]) && Genitives.Any(g => word.EndsWith(g, StringComparison.Ordinal));
        if (!isOfSomebody || !word.EndsWith('i') || whole.Syllables.Count < 3)
            return new SpokenWord(Print(whole, whole.Stressed), whole.IsGuess || isOfSomebody);
        var stem = LatinWord.Of(word.TrimEnd('i'), isPersonal: true);
        var stressed = whole.Syllables[^2].IsClosed ? stem.Syllables.Count - 1 : stem.Stressed;
        var ending = word.EndsWith("ii", StringComparison.Ordinal) ? "-ee-eye" : "-eye";
        return new SpokenWord(Print(stem, stressed) + ending, true);
    }

    private static string Print(LatinWord word, int stressed)
    {
        var text = new StringBuilder();
        var moved = "";
        for (var i = 0; i < word.Syllables.Count; i++)
        {
            var (syllable, isShort) = (word.Syllables[i], i == stressed && IsShort(word, i));
            var onset = moved.Length > 0 ? Sounds(syllable.Onset.Skip(1)) : Sounds(syllable.Onset);
            moved = isShort && !syllable.IsClosed ? word.Syllables[i + 1].Onset[0].Sound : "";
            var spoken = onset + SpokenVowel.Of(word, i, isShort, stressed) + Coda(word, i) + moved;
            text.Append(i == 0 ? "" : "-").Append(i == stressed ? spoken.ToUpperInvariant() : spoken);
        }
        return text.ToString();
    }

    /// <summary>Behind the e of a last syllable s is voiced: koo-OY-deez.</summary>
    private static string Coda(LatinWord word, int index)
    {
        var sounds = Sounds(word.Syllables[index].Coda);
        return sounds == "s" && SpokenVowel.IsLastEs(word, index) ? "z" : sounds;
    }

    /// <summary>
    /// English shortens an open stressed vowel with two syllables behind it (tri-KOP-ter-us), though not u, nor
    /// a, e, o before a consonant with i or e and another vowel (DAY-nee-oh).
    /// </summary>
    private static bool IsShort(LatinWord word, int stressed)
    {
        var behind = word.Syllables.Count - 1 - stressed;
        var syllable = word.Syllables[stressed];
        if (behind < 2 || syllable.IsClosed || syllable.Vowel.IsDiphthong || syllable.Vowel.Spelt == "u" ||
            word.Syllables[stressed + 1].Onset.Count != 1)
            return false;
        var next = word.Syllables[stressed + 1];
        var opensOut = next.Vowel.Spelt is "i" or "e" && !next.IsClosed &&
            word.Syllables[stressed + 2].Onset.Count == 0;
        return !opensOut || syllable.Vowel.Spelt is "i" or "y";
    }

    /// <summary>Of s and a soft c at the beginning of a syllable one is heard.</summary>
    private static string Sounds(IEnumerable<LatinLetter> letters) =>
        string.Concat(letters.Select(l => l.Sound)).Replace("ss", "s", StringComparison.Ordinal);
}
