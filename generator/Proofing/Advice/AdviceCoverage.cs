using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Proofing.Advice;

/// <summary>
/// Which topics of written advice the home sheet of an entry tells. A topic counts only where the
/// sheet prints what the entry or the shop itself says: an estimate from relatives is no word on its water.
/// </summary>
public static class AdviceCoverage
{
    /// <summary>Topics that the shop says once for all its fish.</summary>
    private static readonly HashSet<AdviceTopic> OfTheStore =
        [AdviceTopic.CareRoutine, AdviceTopic.SettlingIn, AdviceTopic.Costs, AdviceTopic.Seller];

    public static bool IsOfTheStore(AdviceTopic topic) => OfTheStore.Contains(topic);

    public static IReadOnlyList<AdviceTopic> Covered(Entry entry, Store store) =>
        [.. Enum.GetValues<AdviceTopic>().Where(topic => Covers(topic, entry, store))];

    public static bool Covers(AdviceTopic topic, Entry entry, Store store)
    {
        var advice = entry.Advice.Or(store.Advice);
        return topic switch
        {
            AdviceTopic.ScientificName or AdviceTopic.Size or AdviceTopic.SocialBehaviour or AdviceTopic.MinimumTank or
            AdviceTopic.Furnishing => true, // no entry can be without these
            AdviceTopic.VetReferral => true, // every sheet ends with it
            AdviceTopic.VernacularName => entry.VernacularNames.Count > 0,
            AdviceTopic.OriginCountry => entry.Origin.CountryCodes.Count > 0,
            AdviceTopic.Habitat => entry.Origin.Habitats.Count > 0,
            AdviceTopic.LifeSpan => entry.Adult.LifeSpan is not null,
            AdviceTopic.ActivityTime => entry.Activity is not null,
            AdviceTopic.WaterValues => IsKept(entry, "ph") && IsKept(entry, "hardness"),
            AdviceTopic.Temperature => IsKept(entry, "temperature"),
            AdviceTopic.Food => entry.Diet.Count > 0,
            AdviceTopic.SexDifferences => entry.Adult.Sexes is not null,
            AdviceTopic.SpecialCautions => entry.Cautions.Count > 0,
            AdviceTopic.CareRoutine => advice.Routine is not null,
            AdviceTopic.SettlingIn => advice.SettlingIn is not null,
            AdviceTopic.Costs => advice.Costs is not null,
            AdviceTopic.Seller => store.Contact is not null,
        };
    }

    private static bool IsKept(Entry entry, string field) => entry.Range(field)?.Of(RangeKind.Keep) is not null;
}
