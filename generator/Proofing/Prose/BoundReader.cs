namespace CareSheets.Proofing.Prose;

/// <summary>
/// Whether an amount is an upper or a lower limit: "no warmer than", "never below", "above that it
/// suffers". A no turns a limit round, and so does harm that is said to come beyond it.
/// </summary>
internal static class BoundReader
{
    private static readonly HashSet<string> Less = Cues.Of(
        "under below less fewer cooler colder shorter smaller lower younger beneath");

    private static readonly HashSet<string> More = Cues.Of(
        "over above more beyond exceed exceeds exceeding warmer hotter longer larger bigger higher " +
        "older past");

    private static readonly HashSet<string> Nos = Cues.Of(
        "no not never nothing nor few hardly none nowhere rarely seldom don't");

    private static readonly HashSet<string> Harm = Cues.Of(
        "gasps gasp suffers suffer dies die stops fails fail perishes sickens shy weakens sulks " +
        "ails refuses kills kill harms harm too trouble wears unhappy stressed never pales fades " +
        "shortens hides languishes uncomfortable chills lethargic listless bullies cowers quarrels " +
        "nervous suffocate suffocates panics starves");

    private static readonly HashSet<string> Denials = Cues.Of("not never nobody don't doesn't cannot without");

    /// <summary>After a no: what the species does not mind suits it.</summary>
    private static readonly HashSet<string> Shrugs = Cues.Of("mind matter object care");

    private static readonly HashSet<string> Ruin = Cues.Of(
        "too kills kill dies die fails suffers sickens hurts hurt harms harm burns " +
        "weakens stunts stresses distresses chills");

    private static readonly HashSet<string> Loose = Cues.Of("above over beyond past");

    private static readonly HashSet<string> Advice = Cues.Of("keep let hold stay should stays must remain");

    public static ProseBound Read(Clause clause)
    {
        if (After(clause) is { } after)
            return after;
        var (word, at) = Word(clause);
        if (word == ProseBound.Exact)
            return word;
        var from = Math.Max(clause.Run.SentenceStart(clause.First), at - 7);
        for (var i = at - 1; i >= from; i--)
        {
            if (Nos.Contains(clause.Run[i].Text))
                return Turned(word);
        }
        if (IsHarmful(clause, at))
            return word == ProseBound.AtMost ? ProseBound.HarmBelow : ProseBound.HarmAbove;
        return word == ProseBound.AtLeast && IsLoose(clause, at) ? ProseBound.Beyond : word;
    }

    /// <summary>
    /// What is denied or does harm is no advice: "20 °C is too cold", "it does not need 28 °C". What the
    /// species does not mind is.
    /// </summary>
    public static bool IsNoAdvice(Clause clause)
    {
        for (var i = clause.Start; i < clause.First; i++)
        {
            if (Denials.Contains(clause.Run[i].Text) && !Shrugs.Contains(clause.Run[i + 1].Text))
                return true;
        }
        for (var i = clause.Next; i < Math.Min(clause.End, clause.Next + 8); i++)
        {
            if (Ruin.Contains(clause.Run[i].Text) ||
                (clause.Run[i].Text == "not" && clause.Run[i + 1].Text is "enough" or "do"))
                return !IsDenied(clause, i);
        }
        return false;
    }

    private static ProseBound Turned(ProseBound bound) =>
        bound == ProseBound.AtMost ? ProseBound.AtLeast : ProseBound.AtMost;

    /// <summary>"eight or more", "ten and upwards", "six at the least"</summary>
    private static ProseBound? After(Clause clause) => (clause.After(0), clause.After(1)) switch
    {
        ("or" or "and", "more" or "upwards" or "up" or "above" or "over" or "longer" or "larger" or "bigger") =>
            ProseBound.AtLeast,
        ("or", "less" or "fewer" or "under" or "below" or "cooler" or "shorter") => ProseBound.AtMost,
        ("at", "least") or ("minimum", _) => ProseBound.AtLeast,
        ("at", "most") or ("maximum", _) => ProseBound.AtMost,
        ("at", "the") when clause.After(2) is "least" => ProseBound.AtLeast,
        ("at", "the") when clause.After(2) is "most" => ProseBound.AtMost,
        _ => null,
    };

    /// <summary>The limiting word nearest before the amount, and where it stands.</summary>
    private static (ProseBound Bound, int At) Word(Clause clause)
    {
        var reach = Math.Max(clause.Start, clause.First - 6);
        for (var i = clause.First - 1; i >= reach; i--)
        {
            var (text, before) = (clause.Run[i].Text, clause.Run[i - 1].Text);
            if (text == "least" && before == "at")
                return (ProseBound.AtLeast, i - 1);
            if (text == "most" && before == "at")
                return (ProseBound.AtMost, i - 1);
            if (text == "to" && before == "up")
                return (ProseBound.AtMost, i - 1);
            if (text is "minimum" or "maximum")
                return (text == "minimum" ? ProseBound.AtLeast : ProseBound.AtMost, i);
            if (Less.Contains(text))
                return (ProseBound.AtMost, i);
            if (More.Contains(text))
                return (ProseBound.AtLeast, i);
        }
        return (ProseBound.Exact, -1);
    }

    /// <summary>"Above 26 °C it gasps", but not "keep it below 26 °C, for it gasps in heat".</summary>
    private static bool IsHarmful(Clause clause, int at)
    {
        for (var i = clause.Start; i < at; i++)
        {
            if (Advice.Contains(clause.Run[i].Text))
                return false;
        }
        var to = Math.Min(clause.Run.SentenceEnd(clause.Next), clause.Next + 10);
        for (var i = clause.Next; i < to && clause.Run[i].Text is not ("for" or "because" or "since"); i++)
        {
            if (Harm.Contains(clause.Run[i].Text))
                return !IsDenied(clause, i);
        }
        return clause.HasBefore(Harm) && clause.LastBefore(Harm) < at && !IsDenied(clause, clause.LastBefore(Harm));
    }

    /// <summary>"no trouble", "never too"</summary>
    private static bool IsDenied(Clause clause, int harm) =>
        clause.Run[harm - 1].Text is "no" or "not" or "never" or "little" or "without";

    /// <summary>"above 30 °C suits it" speaks of what lies beyond; "at least 30 °C" of the limit.</summary>
    private static bool IsLoose(Clause clause, int at) => Loose.Contains(clause.Run[at].Text);
}
