namespace CareSheets.Names.Speech;

/// <summary>
/// Splits a word into sounds and speaks its consonants as English speakers of Latin names mostly do:
/// c and g soft before e, i, y, ae and oe; ch as k; x at the beginning as z; the first letter of a beginning
/// that English can't speak (ps, pt, mn, gn, ct, cn, bd) silent. There is a second tradition, restored
/// Latin, and no rule of the Code; what is said here is from memory.
/// </summary>
internal static class LatinLetters
{
    private static readonly string[] Diphthongs = ["ae", "oe", "au", "eu", "ei", "oi", "ou", "ai"];
    private static readonly string[] OfPersons = ["ee", "oo", "ue"];
    private static readonly string[] Digraphs = ["sch", "ch", "ph", "th", "rh", "qu", "gh", "kh"];
    private static readonly string[] SilentFirst = ["ps", "pt", "mn", "gn", "ct", "cn", "bd", "tm"];

    public static IReadOnlyList<LatinLetter> Of(string word, bool isPersonal)
    {
        var letters = new List<LatinLetter>();
        for (var at = 0; at < word.Length;)
        {
            var letter = IsVowelAt(word, at) ? Vowel(word, at, isPersonal) : Consonant(word, at, isPersonal);
            if (letter.Spelt.Length > 0)
                letters.Add(letter);
            at += Math.Max(1, letter.Spelt.Length);
        }
        return letters;
    }

    /// <summary>y is a consonant at the beginning before a vowel and between two vowels.</summary>
    private static bool IsVowelAt(string word, int at)
    {
        if (word[at] != 'y')
            return IsPlainVowel(word[at]);
        var beforeVowel = at + 1 < word.Length && IsPlainVowel(word[at + 1]);
        return !beforeVowel || (at > 0 && !IsPlainVowel(word[at - 1]));
    }

    private static bool IsPlainVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u';

    /// <summary>At the end of a word only ae and oe are one sound: ster-ba-i, aene-us.</summary>
    private static LatinLetter Vowel(string word, int at, bool isPersonal)
    {
        var two = at + 2 <= word.Length ? word.Substring(at, 2) : "";
        var isLast = at + 2 == word.Length;
        var isSplit = two switch
        {
            "ei" or "ai" or "oi" or "au" or "ou" => isLast,
            "eu" => word.Length - at <= 3 && at > 0,
            _ => false,
        };
        var isOne = Diphthongs.Contains(two) || (isPersonal && OfPersons.Contains(two));
        var spelt = isOne && !isSplit ? two : word[at].ToString();
        return new LatinLetter(spelt, spelt, true);
    }

    private static LatinLetter Consonant(string word, int at, bool isPersonal)
    {
        var spelt = Digraphs.FirstOrDefault(d => word.AsSpan(at).StartsWith(d)) ?? word[at].ToString();
        if (spelt == "h" && at > 0 && (at + 1 == word.Length || !IsVowelAt(word, at + 1)))
            return new LatinLetter("", "", false); // kuhlii: a sign of length, not a sound
        var next = at + spelt.Length;
        var isSoft = next < word.Length && word[next] is 'e' or 'i' or 'y' ||
            next + 1 < word.Length && word.Substring(next, 2) is "ae" or "oe";
        var isSilent = at == 0 && SilentFirst.Any(s => word.StartsWith(s, StringComparison.Ordinal));
        return new LatinLetter(spelt, isSilent ? "" : Sound(spelt, at == 0, isSoft, isPersonal), false);
    }

    private static string Sound(string spelt, bool isFirst, bool isSoft, bool isPersonal) => spelt switch
    {
        "ch" or "kh" => "k",
        "sch" => isPersonal ? "sh" : "sk",
        "ph" => "f",
        "rh" => "r",
        "gh" => "g",
        "qu" => "kw",
        "q" => "k",
        "x" when isFirst => "z",
        "c" => isSoft ? "s" : "k",
        "g" => !isSoft ? "g" : isPersonal ? "gh" : "j",
        _ => spelt,
    };
}
