using CareSheets.Quantities;

namespace CareSheets.Proofing.Prose;

/// <summary>Lengths that are the grown fish's or its tank's, and volumes that are its tank's.</summary>
internal static class SizeSense
{
    /// <summary>No fish for sale lives in less; a litre or two is something else.</summary>
    private const double SmallestTank = 10;

    private static readonly HashSet<string> NotATank = Cues.Of(
        "change changed changes week weekly hour pump filter bucket further extra each salt " +
        "dissolve dissolved drop drops dose rain replace per additional more");

    private static readonly HashSet<string> Sideways = Cues.Of("high height deep depth wide width tall front");

    private static readonly HashSet<string> Parts = Cues.Of("tail fin head body");

    private static readonly HashSet<string> Grown = Cues.Of("grown adult adults maturity");

    private static readonly HashSet<string> Fish = Cues.Of("fish creature animal beauty dwarf giant predator");

    public static ProseQuantity? Length(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not { Measure: Measure.Length, Low: { } unit } ||
            clause.Before(1) is "by" || clause.After(0) is "shorter" or "longer" or "more" or "less" or "away" or "off")
            return null;
        var kind = IsOfTank(clause) ? ProseKind.TankLength : IsOfFish(clause) ? ProseKind.Length : (ProseKind?)null;
        return kind is { } known ? Quantity(known, amount, clause, unit, unit, from, to) : null;
    }

    public static ProseQuantity? Volume(Amount amount, Clause clause, ProseToken from, ProseToken to)
    {
        if (amount.Unit is not { Measure: Measure.Volume, Low: { } low, High: { } high } ||
            low.ToCanonical(amount.Low) < SmallestTank || clause.SentenceHas(Cues.OtherVessel) ||
            clause.HasBefore(NotATank) || clause.HasJustAfter(NotATank, 4) || clause.SentenceHas(Cues.Treatment) ||
            IsPartOfATank(clause))
            return null;
        return Quantity(ProseKind.TankVolume, amount, clause, low, high, from, to);
    }

    /// <summary>"20 litres in a 100 litre tank": how much of it, and of a tank that is an example.</summary>
    private static bool IsPartOfATank(Clause clause) =>
        (IsIn(clause.After(0), clause.After(1)) && Amount.Read(clause.Run, clause.Next + 2) is { } whole &&
            whole.Unit?.Measure == Measure.Volume) ||
        (IsIn(clause.Before(2), clause.Before(1)) &&
            UnitPhrase.Read(clause.Run, clause.First - 3)?.Measure == Measure.Volume);

    private static bool IsIn(string preposition, string article) =>
        preposition is "in" or "of" or "from" && article is "a" or "an" or "every" or "each";

    private static bool IsOfTank(Clause clause)
    {
        if (clause.SentenceHas(Cues.OtherVessel) || clause.HasJustAfter(Sideways, 2))
            return false;
        var next = clause.After(0) is "-" or "long" ? 1 : 0;
        if (Cues.Tank.Contains(clause.After(next)) ||
            (clause.After(0) is "of" && (Cues.Tank.Contains(clause.After(1)) || clause.After(1) is "swimming")))
            return true;
        var tank = clause.LastBefore(Cues.Tank);
        return tank >= 0 && tank > clause.LastBefore(Cues.Growth) && !IsOther(clause, tank) &&
            !clause.HasAfter(Cues.Thing);
    }

    /// <summary>"tank of sand 5 cm deep", "the tank fish of 5 cm"</summary>
    private static bool IsOther(Clause clause, int tank)
    {
        for (var i = tank + 1; i < clause.First; i++)
        {
            if (Cues.Thing.Contains(clause.Run[i].Text) || Fish.Contains(clause.Run[i].Text))
                return true;
        }
        return false;
    }

    private static bool IsOfFish(Clause clause)
    {
        if (IsFromNoseToTail(clause))
            return true;
        if (clause.Has(Cues.Thing) || clause.Has(Cues.Young) || clause.SentenceHas(Cues.OtherVessel) ||
            clause.Has(Cues.Wild) || clause.HasBefore(Cues.Tank) || IsTail(clause))
            return false;
        return clause.HasBefore(Cues.Growth) || clause.HasAfter(Grown) || clause.HasJustBefore(Cues.Sex, 1) ||
            clause.After(0) is "long" or "fish" || (clause.After(0) == "in" && clause.After(1) == "length") ||
            IsFishAfterHyphen(clause) || IsFishOf(clause) || IsItOfThatSize(clause);
    }

    /// <summary>"a tiny fish of 2 cm"</summary>
    private static bool IsFishOf(Clause clause) =>
        clause.Before(1) == "of" && Fish.Contains(clause.Before(2)) && clause.Before(3) is not "other" and not "any";

    private static bool IsFishAfterHyphen(Clause clause) => clause.After(0) is "-" && Fish.Contains(clause.After(1));

    private static bool IsTail(Clause clause) => clause.HasBefore(Parts);

    /// <summary>"At 5 cm it is no giant", "with two inches it is one of the smaller"</summary>
    private static bool IsItOfThatSize(Clause clause) =>
        clause.Before(1) is "at" or "with" && (clause.After(0) is "it" or "this" or "he" or "she" ||
            (clause.After(0) == "," && clause.After(1) is "it" or "this"));

    private static bool IsFromNoseToTail(Clause clause) =>
        clause.After(0) == "from" && clause.After(1) is "nose" or "snout" or "mouth" or "lip";

    private static ProseQuantity Quantity(
        ProseKind kind, Amount amount, Clause clause, Unit low, Unit high, ProseToken from, ProseToken to) =>
        new(kind, low.ToCanonical(amount.Low), high.ToCanonical(amount.High), BoundReader.Read(clause),
            from.Start, to.End - from.Start)
        {
            OfOneSex = clause.HasBefore(Cues.Sex),
        };
}
