namespace CareSheets.Rules.Wording;

/// <summary>
/// Whether a text denies the word that it says, by the words around it: <c>not venomous</c>, <c>no doctor is
/// needed</c>, <c>without venom</c>. A command is no denial: <c>never touch its spines</c> tells of them.
/// </summary>
internal static class Denial
{
    /// <summary>How many words before a word a "not" still reaches it.</summary>
    private const int Reach = 5;

    private static readonly HashSet<string> Lacking =
        ["no", "without", "neither", "nor", "non", "lack", "lacks", "lacking"];

    private static readonly HashSet<string> Nots =
    [
        "not", "never", "hardly", "scarcely", "cannot", "can't", "don't", "doesn't", "isn't", "aren't", "wasn't",
        "weren't", "won't", "wouldn't", "couldn't", "didn't", "needn't",
    ];

    /// <summary>After these a "not" or a "no" denies nothing: not only venomous, no doubt venomous.</summary>
    private static readonly HashSet<string> Undoing =
        ["only", "just", "merely", "without", "doubt", "wonder", "question", "matter", "less", "longer"];

    /// <summary>Between a "not" and a word these begin another statement.</summary>
    private static readonly HashSet<string> Boundaries =
    [
        "may", "can", "could", "might", "is", "are", "it", "its", "they", "their", "if", "that", "because", "since",
        "as", "when", "before", "than", "how", "why", "which", "so", "see", "the", "without",
    ];

    private static readonly HashSet<string> Articles = ["the", "its", "their", "a", "an", "this", "these", "bare"];

    private static readonly HashSet<string> Openers = ["and", "so", "then", "therefore", "or", "also", "always"];

    private static readonly HashSet<string> Verbs = ["is", "are", "be", "was", "were", "isn't", "aren't"];

    private static readonly HashSet<string> Needed = ["needed", "necessary", "required", "need", "called"];

    private static readonly HashSet<string> Nothing =
        ["harmless", "unnecessary", "needless", "unneeded", "superfluous", "imaginary"];

    private static readonly HashSet<string> Danger = ["dangerous", "harmful", "danger", "problem", "feared", "serious"];

    private static readonly HashSet<string> People =
        ["people", "you", "us", "man", "humans", "persons", "children", "hands", "keepers", "everybody", "anybody"];

    private static readonly SpokenPhrase Harmless = SpokenPhrase.Of("harmless");

    private static readonly HashSet<string> Pronouns = ["it", "they", "these", "those", "this", "both", "fish", "all"];

    /// <summary>Forbidden to say or believe: "do not say that no doctor is needed" denies nothing.</summary>
    private static readonly HashSet<string> Opinions =
        ["say", "says", "think", "believe", "claim", "assume", "pretend", "tell", "suppose", "conclude", "mean"];

    public static bool Denies(Said word) =>
        (IsLacking(word) || IsNot(word) || IsDismissed(word)) && !IsForbiddenOpinion(word);

    /// <summary>A no or a not before it, anywhere in its clause, turns it round.</summary>
    public static bool IsTurned(Said said) => Enumerable.Range(1, said.At).Any(back =>
        Nots.Contains(said.Before(back)) || Lacking.Contains(said.Before(back)) ||
        said.Before(back) is "nobody" or "nothing" or "none");

    /// <summary>The whole is called harmless to people: "they are harmless", "it is quite harmless to you".</summary>
    public static bool CallsHarmless(IReadOnlyList<SaidClause> clauses) => FindHarmless(clauses) is not null;

    public static Said? FindHarmless(IReadOnlyList<SaidClause> clauses) =>
        clauses.SelectMany(Harmless.In).FirstOrDefault(said =>
            IsPlain(said, said.Before(1) is "quite" or "perfectly" or "entirely" or "completely" or "really" ? 2 : 1) &&
            said.After(1) != "looking" &&
            (said.After(1) is not ("to" or "for" or "towards") || People.Contains(said.After(2))));

    /// <summary>Of the fish or its spines, which may have been named before: "look fierce but are harmless".</summary>
    private static bool IsPlain(Said said, int back) => said.Before(back) is "is" or "are" &&
        (Pronouns.Contains(said.Before(back + 1)) || said.Before(back + 1) is "" or "but" or "yet" or "though");

    private static bool IsForbiddenOpinion(Said word)
    {
        var opinion = Enumerable.Range(1, word.At).FirstOrDefault(back => Opinions.Contains(word.Before(back)));
        return opinion > 0 && Enumerable.Range(opinion + 1, 3).Any(back =>
            Nots.Contains(word.Before(back)) || word.Before(back) is "nobody" or "wrong" or "let");
    }

    private static bool IsLacking(Said word) => !IsLeftOpen(word) && (Lacking.Contains(word.Before(1)) ||
        (Lacking.Contains(word.Before(2)) && !Articles.Contains(word.Before(1)) && !Undoing.Contains(word.Before(1))));

    /// <summary>"venom or no venom"</summary>
    private static bool IsLeftOpen(Said word) => word.Before(2) == "or" && word.Before(3) == word.After(0);

    private static bool IsNot(Said word)
    {
        for (var back = 1; back <= Reach; back++)
        {
            if (back > 1 && Boundaries.Contains(word.Before(back - 1)))
                return false;
            if (Nots.Contains(word.Before(back)))
                return !Undoing.Contains(word.Before(back - 1)) && !IsCommand(word, word.At - back);
        }
        return false;
    }

    /// <summary>"Never touch ...", "and do not touch ...": whoever is told so has no subject before it.</summary>
    private static bool IsCommand(Said word, int not)
    {
        var start = word.Clause[not - 1] == "do" ? not - 1 : not;
        return not + 1 < word.At && (start == 0 || (start == 1 && Openers.Contains(word.Clause[0])));
    }

    /// <summary>"the spines are harmless", "a doctor is not needed", "the bite is not dangerous".</summary>
    private static bool IsDismissed(Said word)
    {
        if (word.After(1) == "needn't" || (word.After(1) == "need" && word.After(2) == "not"))
            return true;
        for (var ahead = 1; ahead <= Reach; ahead++)
        {
            if (Nothing.Contains(word.After(ahead)))
                return HasVerb(word, ahead) && !HasNot(word, ahead);
            if (Needed.Contains(word.After(ahead)) || Danger.Contains(word.After(ahead)))
                return HasNot(word, ahead) || word.After(ahead - 1) == "no";
        }
        return false;
    }

    private static bool HasVerb(Said word, int until) => Between(word, until).Any(Verbs.Contains);

    private static bool HasNot(Said word, int until) => Between(word, until).Any(Nots.Contains);

    private static IEnumerable<string> Between(Said word, int until) =>
        Enumerable.Range(1, until - 1).Select(word.After);
}
