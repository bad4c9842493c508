using CareSheets.Rules.Wording;

namespace CareSheets.Rules;

/// <summary>
/// Whether a text tells of a hazard, or denies it. A caution takes the place of a hazard to people only where it has
/// the words of <see cref="Hazard.Told"/>, means them, makes little of none, and says whom to call. In every doubt
/// the hazard is told in its own words too.
/// </summary>
public static class HazardTelling
{
    private static readonly HashSet<string> Helpers = ["doctor", "hospital", "medical", "emergency", "vet"];

    public static bool IsToldBy(this Hazard hazard, string caution) =>
        hazard.IsNamedBy(caution) && !Denial.CallsHarmless(SaidText.Of(caution).Clauses) &&
        hazard.Told.All(group => group.Any(word => IsMeant(hazard, caution, word, group))) &&
        (!hazard.IsForHands || (hazard.DoubtedBy(caution) is null && Instruction.IsIn(caution)));

    /// <summary>It has a word of each group, whatever it says with them.</summary>
    public static bool IsNamedBy(this Hazard hazard, string caution) => hazard.Told.Count > 0 &&
        hazard.Told.All(group => group.Any(word => Mentions.Holds(caution, word)));

    /// <summary>
    /// The words of a text that deny this hazard; nothing where none do. That no doctor is needed denies it
    /// only in a text that speaks of it; what makes little of something, only close to where it does.
    /// </summary>
    public static Said? DeniedBy(this Hazard hazard, string text)
    {
        if (hazard.Told.Count == 0)
            return null;
        var near = HazardTalk.Near(text, Speaking(hazard));
        var denied = hazard.Told.Where(group => !Forbids(hazard, group)).SelectMany(group => group)
            .Concat(Own(hazard)).SelectMany(word => SaidText.Find(text, word)).Where(Denial.Denies)
            .FirstOrDefault(said => near.Count > 0 || !Helpers.Contains(said.After(0)));
        return denied ?? (!hazard.IsForHands ? null
            : Belittling.Denied(near, hazard.Kind == HazardKind.PoisonousFlesh) ?? Denial.FindHarmless(near));
    }

    /// <summary>The words of a caution that speaks of this hazard which leave it in doubt.</summary>
    public static Said? DoubtedBy(this Hazard hazard, string caution) =>
        hazard.IsForHands && hazard.Told.Count > 0 && Speaking(hazard).Any(word => Mentions.Holds(caution, word))
            ? Belittling.Doubted(SaidText.Of(caution).Clauses, hazard.Kind == HazardKind.PoisonousFlesh) : null;

    private static IReadOnlyList<string> Own(Hazard hazard) => HazardWords.Of(hazard.Kind);

    private static IReadOnlyList<string> Speaking(Hazard hazard) =>
        [.. hazard.Told[0], .. Own(hazard), .. HazardWords.About(hazard.Kind)];

    private static bool IsMeant(Hazard hazard, string caution, string word, IReadOnlyList<string> group) =>
        Forbids(hazard, group)
            ? Mentions.Holds(caution, word)
            : SaidText.Find(caution, word).Any(said => !Denial.Denies(said));

    /// <summary>Whether its own words forbid it, as in "nobody may eat it": a caution may then forbid it too.</summary>
    private static bool Forbids(Hazard hazard, IReadOnlyList<string> group) =>
        group.SelectMany(word => new[] { hazard.Says, hazard.Brief }.SelectMany(own => SaidText.Find(own, word))).Any(
            said => Enumerable.Range(1, said.At).Any(back => said.Before(back) is "no" or "never" or "nobody"));
}
