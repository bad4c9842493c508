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
    ];

    /// <summary>What follows a thing that is named as a mistake, or allowed under a condition.</summary>
    private static readonly HashSet<string> Blame =
    [
        "not", "never", "cannot", "mistake", "wrong", "harm", "harms", "harmful", "kill", "kills", "cruel", "unlawful",
        "illegal", "offence", "dangerous", "fatal", "bad", "worse", "wears", "hurts", "cuts", "ruins", "myth",
        "nonsense", "relative", "relatives", "cousin", "cousins", "only", "where", "if",
    ];

    private const int After = 6;

    /// <summary>The first of these phrases that the text says as advice; nothing where it says none so.</summary>
    public static Said? Find(string text, IReadOnlyList<SpokenPhrase> phrases) =>
        SaidText.Find(text, phrases).FirstOrDefault(IsMeant);

    private static bool IsMeant(Said said) =>
        !(said.Clause.Opening.Start < said.Start && Doubts.Contains(said.Clause.Opening.Text)) &&
        !Enumerable.Range(1, said.At).Any(back => Doubts.Contains(said.Before(back))) &&
        !Enumerable.Range(1, After).Any(ahead => Blame.Contains(said.After(ahead)));
}
