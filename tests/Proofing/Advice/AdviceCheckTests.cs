using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Proofing.Advice;
using CareSheets.Regulations;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing.Advice;

/// <summary>Written advice: what a duty asks and a sheet lacks is told, and what a sheet covers stands on it.</summary>
public sealed class AdviceCheckTests
{
    private static readonly Lazy<LawBook> Law = new(() =>
    {
        var bench = new Workbench(new ContentSettings { Content = Repository.At("content") });
        Assert.NotNull(bench.ReadCollection());
        return bench.Law;
    });

    private static Store Store => RealContent.Collection.Store;

    [Fact]
    public void Every_topic_is_known_by_the_name_that_people_write()
    {
        var schema = File.ReadAllText(Repository.At("schema", "duties.schema.json"));
        Assert.All(Enum.GetValues<AdviceTopic>(), topic =>
            Assert.Contains($"\"{AdviceFields.Name(topic)}\"", schema, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("GB-ENG")]
    [InlineData("NL")]
    [InlineData("GB-SCT")]
    public void The_sheets_of_this_shop_lack_nothing_that_these_places_ask(string place) =>
        Assert.Equal([], Found(Store with { Jurisdiction = place }, RealContent.Collection.Entries)
            .Select(d => d.Message));

    [Theory]
    [InlineData("DE")]
    [InlineData("US-CA")]
    public void Where_water_values_are_asked_a_species_known_by_estimate_alone_lacks_them(string place)
    {
        var found = Found(Store with { Jurisdiction = place }, RealContent.Collection.Entries).ToList();
        var unknown = RealContent.Collection.Entries.Where(e =>
            e.Range("ph")?.Of(RangeKind.Keep) is null || e.Range("hardness")?.Of(RangeKind.Keep) is null).ToList();
        Assert.NotEmpty(unknown);
        Assert.Equal(unknown.Select(e => e.Span.File).Order(), found.Select(d => d.Span.File).Order());
        Assert.All(found, d => Assert.Contains("water values", d.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_shop_without_a_routine_is_told_once_and_an_entry_may_say_its_own()
    {
        var silent = Store with { Advice = CareSheets.Species.Advice.None };
        var entries = RealContent.Collection.Entries;
        var told = Assert.Single(Found(silent, entries));
        Assert.Equal((RegulationCodes.StoreLacks, "store.yaml"), (told.Code, told.Span.File));
        Assert.Empty(Found(silent, [.. entries.Select(e => e with { Advice = new("Feed it.", null, null) })]));
    }

    [Fact]
    public void An_entry_that_says_less_lacks_more()
    {
        var fish = RealContent.Collection.Find("danio-rerio")!;
        var full = AdviceCoverage.Covered(fish, Store);
        Assert.Equal(Enum.GetValues<AdviceTopic>(), full);
        var adult = fish.Adult with { LifeSpan = null, Sexes = null };
        var bare = fish with { Activity = null, Adult = adult, Cautions = [] };
        Assert.Equal(
            [AdviceTopic.LifeSpan, AdviceTopic.ActivityTime, AdviceTopic.SexDifferences, AdviceTopic.SpecialCautions],
            full.Except(AdviceCoverage.Covered(bare, Store)));
    }

    [Fact]
    public void What_a_sheet_claims_to_cover_is_on_it()
    {
        foreach (var entry in RealContent.Collection.Entries)
        {
            var sheet = RealSite.Pages[$"papers/sheet-{entry.Name}.html"].Body!.TextContent;
            var advice = entry.Advice.Or(Store.Advice);
            string[] told =
            [
                entry.Origin.Habitats[0].Value, advice.Routine!, advice.SettlingIn!, advice.Costs!, Store.Contact!,
                entry.Adult.Sexes?.Value ?? "", entry.Cautions[0].Value,
            ];
            Assert.All(told, text => Assert.Contains(text, sheet, StringComparison.Ordinal));
        }
    }

    private static IEnumerable<Diagnostic> Found(Store store, IReadOnlyList<Entry> entries) =>
        AdviceCheck.Check(store, entries, Law.Value.Duties, "store.yaml");
}
