using CareSheets.Quantities;

namespace CareSheets.Proofing.Prose;

/// <summary>Years and months that are the fish's life span, and numbers that are its group.</summary>
internal static class LifeSense
{
    private static readonly HashSet<string> OtherTime = Cues.Of(
        "ago after before described mature matures maturity eggs need needs bred run running until " +
        "since first every fade fades later colour within century once in about settle quarantine " +
        "takes take wild");

    private static readonly HashSet<string> Life = Cues.Of(
        "live lives lived living life lifespan span age aged longevity");

    private static readonly HashSet<string> Old = Cues.Of("old ones reach reaches expect");

    private static readonly HashSet<string> NotAFish = Cues.Of(
        "eggs egg fry young males females male female species times bars stripes spots days hours " +
        "minutes plants stones caves shells wives tanks genera names rivers countries catfish " +
        "snails shrimps shrimp strains forms rows lines others' per");

    private static readonly HashSet<string> Advice = Cues.Of(
        "keep kept buy start have house stock take wants needs need number should best least fewer " +
        "bring acquire choose offer get give");

    private static readonly HashSet<string> Enough = Cues.Of("enough suffices plenty");

    private static readonly HashSet<string> Content = Cues.Of(
        "enough plenty suffice do well fine happy happily content company");

    private static readonly HashSet<string> Counting = Cues.Of("of should must number numbers");

    /// <summary>After a number that counts fish of its own kind and nothing else.</summary>
    private static readonly HashSet<string> NotCounted = Cues.Of(
        ", ; . ) : or together at fish fishes individuals animals specimens is are does will makes make " +
        "looks swim swims goes in for and it when as");

    private static readonly HashSet<string> TooFew = Cues.Of(
        "few squabble cowers cower bully sulks sulk hides nervous enough?");

    public static ProseQuantity? Span(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is { Measure: Measure.Duration, Low: { } unit })
            return IsOfLife(clause) && unit.Key is not ("day" or "week")
                ? Of(ProseKind.LifeSpan, unit.ToCanonical(amount.Low), unit.ToCanonical(amount.High), clause, from, to)
                : null;
        return amount.Unit is null && clause.Before(1) == "of" && clause.Before(2) == "age" && amount.High < 100
            ? Of(ProseKind.LifeSpan, Years(amount.Low), Years(amount.High), clause, from, to)
            : null;
    }

    public static ProseQuantity? Group(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not null || amount.Low < 2 || amount.High > 200 || amount.Low % 1 != 0 ||
            clause.SentenceHas(Cues.Wild) || clause.SentenceHas(Cues.Breeding) || clause.HasAfter(TooFew))
            return null;
        var others = Others(clause);
        var isMeant = others == 1
            ? clause.HasJustBefore(Advice, 5)
            : IsCounted(clause) &&
                (IsOfAGroup(clause) || IsAdvised(clause) || IsDozen(amount, clause) || IsContent(clause));
        if (!isMeant)
            return null;
        return Of(ProseKind.Group, amount.Low + others, amount.High + others, clause, from, to);
    }

    private static bool IsOfLife(Clause clause)
    {
        if (clause.After(0) is "ago" or "before" or "after" or "later" ||
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
    private static int Others(Clause clause)
    {
        var isMoreOfItsKind =
            clause.After(0) == "more" && clause.After(1) == "of" && clause.After(2) is "its" or "their";
        return isMoreOfItsKind || clause.After(0) is "companions" or "others" or "fellows" ? 1 : 0;
    }

    /// <summary>Nothing else is counted: the number ends the phrase, or its own kind follows.</summary>
    private static bool IsCounted(Clause clause)
    {
        var next = clause.After(0);
        if (next.Length == 0 || NotCounted.Contains(next))
            return true;
        return next == "of" && clause.After(1) is "them" or "its" or "these" or "their" or "one";
    }

    /// <summary>"a group of six", "shoals of no fewer than eight"</summary>
    private static bool IsOfAGroup(Clause clause)
    {
        var group = clause.LastBefore(Cues.Company);
        return group >= 0 && clause.First - group <= 6 &&
            (Counting.Contains(clause.Run[group + 1].Text) || clause.First - group == 2);
    }

    /// <summary>"keep at least eight", "never fewer than six", "start with six"</summary>
    private static bool IsAdvised(Clause clause) =>
        !clause.Has(NotAFish) && clause.HasJustBefore(Advice, 5) &&
        clause.Before(1) is not ("in" or "two" or "to" or "by");

    /// <summary>"a dozen is a pleasure", "a trio of these is enough"</summary>
    private static bool IsDozen(Amount amount, Clause clause) =>
        (amount.IsDozen && clause.After(0) is "is" or "are" or "or" or "of" or "will" or "in" or "swim") ||
        (clause.Run[amount.Next - 1].Text == "trio" && clause.HasAfter(Enough));

    /// <summary>"Two are enough", "three are company enough", "a trio does well"</summary>
    private static bool IsContent(Clause clause) =>
        clause.After(0) is "are" or "is" or "make" or "makes" or "do" or "does" or "will" or "suffice" or "live" or
            "of" && clause.Before(1).Length == 0 && clause.HasJustAfter(Content, 4);

    private static double Years(double count) => DimensionCatalogue.Duration.Find("years")!.ToCanonical(count);

    private static ProseQuantity Of(
        ProseKind kind, double low, double high, Clause clause, ProseToken from, ProseToken to) =>
        new(kind, low, high, BoundReader.Read(clause), from.Start, to.End - from.Start);
}
