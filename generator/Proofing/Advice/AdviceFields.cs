using CareSheets.Regulations;

namespace CareSheets.Proofing.Advice;

/// <summary>Topics of advice as people say them, and the field of the content that each comes from.</summary>
internal static class AdviceFields
{
    /// <summary><c>LifeSpan</c> is "life span", as duties.yaml writes it.</summary>
    public static string Name(AdviceTopic topic) => string.Concat(
        topic.ToString().Select((c, i) => i > 0 && char.IsAsciiLetterUpper(c) ? $" {char.ToLowerInvariant(c)}"
            : char.ToLowerInvariant(c).ToString()));

    public static string Of(AdviceTopic topic) => topic switch
    {
        AdviceTopic.ScientificName => "scientificName",
        AdviceTopic.VernacularName => "vernacularName",
        AdviceTopic.OriginCountry => "origin.countryCode",
        AdviceTopic.Habitat => "origin.habitat",
        AdviceTopic.Size => "adult.length",
        AdviceTopic.LifeSpan => "adult.lifeSpan",
        AdviceTopic.SocialBehaviour => "company",
        AdviceTopic.ActivityTime => "active",
        AdviceTopic.MinimumTank => "tank",
        AdviceTopic.Furnishing => "tank.needs",
        AdviceTopic.WaterValues => "care.ph and care.hardness",
        AdviceTopic.Temperature => "care.temperature",
        AdviceTopic.Food => "diet",
        AdviceTopic.CareRoutine => "advice.routine",
        AdviceTopic.SexDifferences => "adult.sexes",
        AdviceTopic.SpecialCautions => "cautions",
        AdviceTopic.SettlingIn => "advice.settling in",
        AdviceTopic.VetReferral => "the theme's words on vets",
        AdviceTopic.Costs => "advice.costs",
        AdviceTopic.Seller => "contact",
    };
}
