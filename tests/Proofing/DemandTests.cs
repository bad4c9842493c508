using CareSheets.Pages;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Tests.Support;
using CareSheets.Tests.Tankmates;

namespace CareSheets.Tests.Proofing;

/// <summary>What a species asks for: each reason stands on figures of its entry, and nothing is called easy.</summary>
public sealed class DemandTests
{
    private static IReadOnlyList<Demand> Demands => RealContent.Collection.Practice.Demands;

    [Theory]
    [InlineData("room-for-a-large-fish", "adult: { length: 16 cm TL }", "adult: { length: 15 cm TL }")]
    [InlineData("a-steady-temperature", "care: { temperature: 24–28 °C }", "care: { temperature: 22–28 °C }")]
    [InlineData("warm-water", "care: { temperature: 26–30 °C }", "care: { temperature: 25–30 °C }")]
    [InlineData("cool-water", "care: { temperature: 18–24 °C }", "care: { temperature: 18–26 °C }")]
    [InlineData("salt-in-the-water", "care: { salinity: 5–10 g/L }", "care: { salinity: < 10 g/L }")]
    [InlineData("company-of-its-kind", "company: { group: 6 }", "company: { group: 5 }")]
    [InlineData("special-food", "diet: [wood rasper]", "diet: [omnivore]")]
    [InlineData("live-or-frozen-food", "foods: [live daphnia]", "foods: [live daphnia, small flake]")]
    [InlineData("a-tight-lid", "tank: { lid: tight }", "tank: { lid: yes }")]
    [InlineData("much-oxygen", "care: { oxygen: high }", "care: { oxygen: ordinary }")]
    [InlineData("unknown-water", "care: { ph: 6–7 }", "care: { ph: 6–7, hardness: 1–5 °dH, temperature: 20–25 °C }")]
    public void A_demand_holds_at_its_limit_and_not_beyond(string name, string asks, string asksNot)
    {
        var demand = Demands.Single(d => d.Name.Value == name);
        Assert.Equal(Truth.Yes, demand.When.Judge(Rules.RuleDesk.Entry(asks)));
        Assert.NotEqual(Truth.Yes, demand.When.Judge(Rules.RuleDesk.Entry(asksNot)));
    }

    [Fact]
    public void The_tap_of_the_shop_decides_what_is_softer_than_it()
    {
        var collection = RealContent.Collection;
        var dry = collection.Store with { Tap = null };
        var soft = collection.Entries.Single(e => e.Name == "paracheirodon-axelrodi");
        const string name = "softer-water-than-the-tap";
        Assert.Contains(DemandsOf.Entry(soft, Demands, collection.Store), d => d.Demand.Name.Value == name);
        Assert.DoesNotContain(DemandsOf.Entry(soft, Demands, dry), d => d.Demand.Name.Value == name);
    }

    [Fact]
    public void Every_blank_is_filled_from_the_entry()
    {
        foreach (var entry in RealContent.Collection.Entries)
        {
            var facts = new DemandFacts(Shop.Site).Make(entry);
            Assert.All(facts, f => Assert.DoesNotMatch(@"[{}]", f.Value));
            Assert.DoesNotMatch(@"[{}]", new DemandFacts(Shop.Site).Brief(entry));
            var large = DemandsOf.Entry(entry, Demands, RealContent.Collection.Store)
                .Any(d => d.Demand.Name.Value == "room-for-a-large-fish");
            var length = entry.Adult.Length.Value.WithoutBasis().Text;
            Assert.True(!large || facts[0].Value.Contains(length, StringComparison.Ordinal), entry.Name);
        }
    }

    [Fact]
    public void The_number_told_is_that_of_the_reasons()
    {
        var entry = RealContent.Collection.Entries.Single(e => e.Name == "mastacembelus-erythrotaenia");
        var found = DemandsOf.Entry(entry, Demands, RealContent.Collection.Store);
        Assert.True(found.Count > 5);
        Assert.StartsWith($"{found.Count} things", new DemandFacts(Shop.Site).Count(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_without_demands_calls_nothing_easy()
    {
        var page = ToySite.Read().Species("betta-splendens");
        Assert.Empty(page.Demands);
        Assert.Contains("no fish easy", page.DemandCount, StringComparison.Ordinal);
    }
}
