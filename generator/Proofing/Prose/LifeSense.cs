using CareSheets.Quantities;

namespace CareSheets.Proofing.Prose;

/// <summary>Years and months that are the fish's life span, and numbers that are its group.</summary>
internal static class LifeSense
{
    private static readonly HashSet<string> OtherTime =
    [
        "ago", "after", "before", "described", "mature", "matures", "maturity", "eggs", "need", "needs", "bred", "run",
        "running", "until", "since", "first", "every", "fade", "fades", "later", "colour", "within", "century", "once",
        "in", "about", "settle", "quarantine", "takes", "take", "wild",
    ];

    private static readonly HashSet<string> Life =
        ["live", "lives", "lived", "living", "life", "lifespan", "span", "age", "aged", "longevity"];

    private static readonly HashSet<string> Old = ["old", "ones", "reach", "reaches", "expect"];

    private static readonly HashSet<string> NotAFish =
    [
        "eggs", "egg", "fry", "young", "males", "females", "male", "female", "species", "times", "bars", "stripes", "spots",
        "days", "hours", "minutes", "plants", "stones", "caves", "shells", "wives", "tanks", "genera", "names", "rivers",
        "countries", "catfish", "snails", "shrimps", "shrimp", "strains", "forms", "rows", "lines", "others'", "per",
    ];

    private static readonly HashSet<string> Advice =
    [
        "keep", "kept", "buy", "start", "have", "house", "stock", "take", "wants", "needs", "need", "number", "should",
        "best", "least", "fewer", "bring", "acquire", "choose", "offer", "get", "give",
    ];

    private static readonly HashSet<string> TooFew =
        ["few", "squabble", "cowers", "cower", "bully", "sulks", "sulk", "hides", "nervous", "enough?"];

    public static ProseQuantity? Span(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is { Measure: Measure.Duration, Low: { } unit })
            return IsOfLife(clause) && unit.Key is not ("day" or "week")
                ? Plain(ProseKind.LifeSpan, unit.ToCanonical(amount.Low), unit.ToCanonical(amount.High), clause, from, to)
                : null;
        return amount.Unit is null && clause.Before(1) == "of" && clause.Before(2) == "age" && amount.High < 100
            ? Plain(ProseKind.LifeSpan, Years(amount.Low), Years(amount.High), clause, from, to)
            : null;
    }

    public static ProseQuantity? Group(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not null || amount.Low < 2 || amount.High > 200 || amount.Low % 1 != 0 ||
            clause.SentenceHas(Cues.Wild) || clause.SentenceHas(Cues.Breeding) || clause.HasAfter(TooFew))
            return null;
        var others = Others(clause);
        if (others == 1 ? !clause.HasJustBefore(Advice, 5) : (!IsCounted(clause) || !(IsOfAGroup(clause) || IsAdvised(clause) || IsDozen(amount, clause))))
            return null;
        return Plain(ProseKind.Group, amount.Low + others, amount.High + others, clause, from, to);
    }

    private static bool IsOfLife(Clause clause)
    {
        if (clause.HasJustAfter(new HashSet<string> { "ago", "before", "after", "later" }, 1) ||
            clause.Before(1) is "after" or "at" or "in" or "every" or "within" or "first" or "than")
            return false;
        if (clause.Before(1) is "once" or "twice" or "times")
            return false;
        for (var i = Math.Max(clause.Start, clause.First - 6); i < clause.First; i++)
        {
            if (Life.Contains(clause.Run[i].Text) && IsVerbOrNoun(clause.Run, i))
                return true;
        }
        return clause.HasBefore(Old) && !clause.Has(OtherTime);
    }

    /// <summary>Not the first half of "live-bearer", nor the live of "live food".</summary>
    private static bool IsVerbOrNoun(TokenRun run, int at) =>
        run[at].Text != "live" || run[at + 1].Text is "for" or "to" or "up" or "about" or "only" or "in" or "some" or
            "as" or "well" or "no" or "between" or "from" or "over" or "more" or "around" or "nearly";

    /// <summary>"seven companions", "three others of its kind": itself comes on top.</summary>
    private static int Others(Clause clause) =>
        clause.After(0) is "companions" or "others" or "fellows" || (clause.After(0) == "more" && clause.After(1) == "of" &&
            clause.After(2) is "its" or "their") ? 1 : 0;

    /// <summary>Nothing else is counted: the number ends the phrase, or its own kind follows.</summary>
    private static bool IsCounted(Clause clause)
    {
        var next = clause.After(0);
        if (next is "" or "," or ";" or "." or ")" or ":" or "or" or "together" or "at" or "fish" or "fishes" or
            "individuals" or "animals" or "specimens" or "is" or "are" or "will" or "makes" or "make" or "looks" or "swim" or
            "swims" or "goes" or "in" or "for" or "and" or "it" or "when" or "as")
            return true;
        return next == "of" && clause.After(1) is "them" or "its" or "these" or "their" or "one";
    }

    /// <summary>"a group of six", "shoals of no fewer than eight"</summary>
    private static bool IsOfAGroup(Clause clause)
    {
        var group = clause.LastBefore(Cues.Company);
        return group >= 0 && clause.First - group <= 6 &&
            (clause.Run[group + 1].Text is "of" or "should" or "must" or "number" or "numbers" || clause.First - group == 2);
    }

    /// <summary>"keep at least eight", "never fewer than six", "start with six"</summary>
    private static bool IsAdvised(Clause clause) =>
        !clause.Has(NotAFish) && clause.HasJustBefore(Advice, 5) && clause.Before(1) is not ("in" or "two" or "to" or "by");

    /// <summary>"a dozen is a pleasure", "a trio of these is enough"</summary>
    private static bool IsDozen(Amount amount, Clause clause) =>
        (amount.IsDozen && clause.After(0) is "is" or "are" or "or" or "of" or "will" or "in" or "swim") ||
        (clause.Run[amount.Next - 1].Text == "trio" && clause.HasAfter(new HashSet<string> { "enough", "suffices", "plenty" }));

    private static double Years(double count) => DimensionCatalogue.Duration.Find("years")!.ToCanonical(count);

    private static ProseQuantity Plain(
        ProseKind kind, double low, double high, Clause clause, ProseToken from, ProseToken to) =>
        new(kind, low, high, BoundReader.Read(clause), from.Start, to.End - from.Start);
}
