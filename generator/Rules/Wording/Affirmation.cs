namespace CareSheets.Rules.Wording;

/// <summary>
/// Whether a text says something as its own advice. What it forbids, doubts, asks about or says of others is
/// none: "never release it", "unlike its brackish relatives", "ask whether it is legal to keep". In doubt it
/// is none, for a false alarm is a defect and a miss is not.
/// </summary>
internal static class Affirmation
{
    private static readonly HashSet<string> Doubts =
    [
        "no", "not", "never", "nor", "neither", "none", "nobody", "nothing", "nowhere", "without", "hardly", "scarcely",
        "seldom", "rarely", "cannot", "can't", "don't", "doesn't", "isn't", "aren't", "won't", "mustn't", "shouldn't",
        "unlike", "instead", "rather", "avoid", "avoids", "refuse", "against", "whether", "if", "where", "only", "ask",
        "confirm", "doubt", "myth", "wrongly", "mistake", "people", "shops", "books", "called", "labelled",
        "unlawful", "illegal", "offence", "crime", "wrong", "dangerous", "cruel", "forbidden", "forbid", "forbids",
    ];

    /// <summary>What follows a thing that is named as a mistake, or allowed under a condition.</summary>
    private static readonly HashSet<string> Blame =
    [
        "not", "never", "cannot", "mistake", "wrong", "harm", "harms", "harmful", "kill", "kills", "cruel", "unlawful",
        "illegal", "offence", "dangerous", "fatal", "bad", "worse", "wears", "hurts", "cuts", "ruins", "myth",
        "nonsense", "relative", "relatives", "cousin", "cousins", "only", "where", "if",
        "sulks", "sulk", "pines", "mopes", "hides", "fades", "suffers", "dies", "wastes", "torments",
    ];

    /// <summary>What says when something holds.</summary>
    private static readonly HashSet<string> Conditions = ["if", "where", "only"];

    private const int After = 6;

    /// <summary>The first of these phrases that the text says as advice; nothing where it says none so.</summary>
    /// <param name="evenIf">Advice under a condition is advice too.</param>
    public static Said? Find(string text, IReadOnlyList<SpokenPhrase> phrases, bool evenIf = false) =>
        SaidText.Find(text, phrases).FirstOrDefault(said => IsMeant(said, evenIf));

    private static bool IsMeant(Said said, bool evenIf)
    {
        bool Is(HashSet<string> words, string word) => words.Contains(word) && !(evenIf && Conditions.Contains(word));
        return !(said.Clause.Opening.Start < said.Start && Is(Doubts, said.Clause.Opening.Text) &&
                !IsOfItsOwn(said, int.MaxValue)) &&
            !Enumerable.Range(1, said.At).Any(back => Is(Doubts, said.Before(back)) && !IsOfItsOwn(said, back)) &&
            !Enumerable.Range(1, After).Any(ahead => Is(Blame, said.After(ahead)));
    }

    /// <summary>
    /// Whether an "and" with a verb or a subject of its own parts it from the doubt: "it never jumps and needs no
    /// cover", but not "never net it and put it into a pond".
    /// </summary>
    private static bool IsOfItsOwn(Said said, int back)
    {
        var first = said.Clause[said.At];
        return back > 1 && said.Before(1) is "and" or "so" &&
            (first is "can" or "may" or "will" or "no" or "is" || (first.Length > 3 && first.EndsWith('s')));
    }
}
