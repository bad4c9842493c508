namespace CareSheets.Rules;

/// <summary>
/// Words by which a text speaks of a hazard to people, beside those that its record names under <c>told by</c>.
/// </summary>
internal static class HazardWords
{
    private static readonly string[] Poison = ["poison", "poisonous", "toxic", "toxin", "toxins"];

    private static readonly string[] Venom = ["venom", "venomous", "poison", "poisonous", "sting", "stings", "stung"];

    /// <summary>Words of what hurts: to deny one is to deny the hazard.</summary>
    public static IReadOnlyList<string> Of(HazardKind kind) => kind switch
    {
        HazardKind.Shock => ["shock", "shocks", "electric", "electricity"],
        HazardKind.Sting or HazardKind.VenomousSpines => Venom,
        HazardKind.PoisonousFlesh => Poison,
        HazardKind.Bite => ["bite", "bites", "bitten"],
        _ => [],
    };

    /// <summary>Words that may also be about something else: they show what a sentence is about, no more.</summary>
    public static IReadOnlyList<string> About(HazardKind kind) => kind switch
    {
        HazardKind.Sting or HazardKind.VenomousSpines or HazardKind.LockingSpines =>
            ["spine", "spines", "prick", "pricks", "puncture", "wound", "wounds"],
        HazardKind.PoisonousFlesh => ["flesh", "liver", "skin", "meat"],
        HazardKind.Bite => ["teeth", "fingers"],
        _ => [],
    };
}
