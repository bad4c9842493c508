using CareSheets.Rules.Wording;

namespace CareSheets.Rules;

/// <summary>
/// Whether a text tells of a hazard, or denies it. A word that is denied tells nothing, so that a caution such as
/// "its spines are not venomous, so no doctor is needed" never takes the place of the hazard's own words.
/// </summary>
public static class HazardTelling
{
    private static readonly HashSet<string> Helpers = ["doctor", "hospital", "medical", "emergency", "vet"];

    /// <summary>It has a word of each group of <see cref="Hazard.Told"/>, and means it.</summary>
    public static bool IsToldBy(this Hazard hazard, string caution) =>
        hazard.Told.Count > 0 && !Denial.CallsHarmless(caution) &&
        hazard.Told.All(group => group.Any(word => IsMeant(hazard, caution, word, group)));

    /// <summary>
    /// The words of a text that deny this hazard; nothing where none do. That no doctor is needed denies it
    /// only in a text that speaks of it.
    /// </summary>
    public static Said? DeniedBy(this Hazard hazard, string text)
    {
        if (hazard.Told.Count == 0)
            return null;
        var speaks = hazard.Told[0].SelectMany(word => SaidText.Find(text, word)).FirstOrDefault();
        var denied = hazard.Told.Where(group => !Forbids(hazard, group)).SelectMany(group => group)
            .SelectMany(word => SaidText.Find(text, word)).Where(Denial.Denies)
            .FirstOrDefault(said => speaks is not null || !Helpers.Contains(said.After(0)));
        return denied ?? (Denial.CallsHarmless(text) ? speaks : null);
    }

    private static bool IsMeant(Hazard hazard, string caution, string word, IReadOnlyList<string> group) =>
        Forbids(hazard, group)
            ? Mentions.Holds(caution, word)
            : SaidText.Find(caution, word).Any(said => !Denial.Denies(said));

    /// <summary>Whether its own words forbid it, as in "nobody may eat it": a caution may then forbid it too.</summary>
    private static bool Forbids(Hazard hazard, IReadOnlyList<string> group) =>
        group.SelectMany(word => new[] { hazard.Says, hazard.Brief }.SelectMany(own => SaidText.Find(own, word))).Any(
            said => Enumerable.Range(1, said.At).Any(back => said.Before(back) is "no" or "never" or "nobody"));
}
