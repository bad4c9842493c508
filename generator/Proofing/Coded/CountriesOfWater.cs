using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// The countries of a species lie on the continent of its waters, as the other entries of those waters tell it, and
/// not on two that no freshwater fish is native to both of.
/// </summary>
internal sealed class CountriesOfWater(SpeciesCollection collection) : ICodedRule
{
    public static readonly CodedText Text = new(
        "countries-suit-the-waters", Severity.Warning,
        "A country lies on another continent than the rest of its home",
        "Look the code up again, or the name of the water.",
        "No freshwater fish lives by nature on both sides of an ocean", "common practice, no source");

    private const int FewestOthers = 2;

    /// <summary>Continents that some freshwater fishes share.</summary>
    private static readonly HashSet<(string, string)> Neighbours =
    [
        ("Asia", "Europe"), ("Europe", "Asia"), ("Africa", "Asia"), ("Asia", "Africa"), ("Asia", "Oceania"),
        ("Oceania", "Asia"),
    ];

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        var countries = Countries(entry).ToList();
        var odd = countries.Select(c => (Country: c, Why: AgainstWaters(c, countries, entry)))
            .Where(o => o.Why is not null).ToList();
        return odd.Count > 0
            ? odd.Select(o => Tell(entry, o.Country, o.Why!))
            : AgainstOthers(countries).Select(o => Tell(entry, o.Country, o.Why));
    }

    private static IEnumerable<Sourced<Country>> Countries(Entry entry) =>
        from code in entry.Origin.CountryCodes
        let country = CountryCatalogue.Find(code.Value)
        where country is not null
        select code.With(country);

    private string? AgainstWaters(Sourced<Country> country, List<Sourced<Country>> all, Entry entry)
    {
        foreach (var water in entry.Origin.WaterBodies)
        {
            var others = collection.Waters.GetValueOrDefault(water.Value, []).Where(e => e.Name != entry.Name).ToList();
            var there = others.SelectMany(Countries).Select(c => c.Value.Continent).ToHashSet();
            if (others.Count < FewestOthers || there.Count != 1)
                continue;
            var isThere = all.Exists(c => there.Contains(c.Value.Continent));
            if (isThere ? there.Any(t => AreApart(t, country.Value.Continent)) : there.Count > 0)
                return $"the other fishes of “{water.Value}” are of {there.First()}";
        }
        return null;
    }

    /// <summary>Where no water helps, the continent that most of its countries are on is taken for right.</summary>
    private static IEnumerable<(Sourced<Country> Country, string Why)> AgainstOthers(List<Sourced<Country>> all)
    {
        var most = all.Select(c => c.Value).GroupBy(c => c.Continent).MaxBy(g => g.Count())?.First();
        return from country in all
               where most is not null && AreApart(most.Continent, country.Value.Continent)
               select (country, $"{most!.Code} ({most.Name}) is in {most.Continent}");
    }

    private static bool AreApart(string one, string other) => one != other && !Neighbours.Contains((one, other));

    private static Breach Tell(Entry entry, Sourced<Country> country, string why) =>
        Text.Breach(entry, country.Span, "origin.countryCode",
            $"{country.Value.Code} ({country.Value.Name}) is in {country.Value.Continent}, and {why}");
}
