using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>
/// Facts of the trade (common practice, no source), each planted the wrong way round into an entry of the
/// repository, which must be told at the line that was changed.
/// </summary>
public sealed class TradeFactTests
{
    [Theory]
    [InlineData("poecilia-wingei", "hardness: 10–28 °dH", "hardness: 1–6 °dH", "livebearers-want-hard-water")]
    [InlineData("poecilia-wingei", "ph: 7.0–8.5", "ph: 6.0–7.5", "livebearers-want-no-acid")]
    [InlineData("hoplisoma-panda", "substrate: fine sand", "substrate: gravel", "sifters-want-soft-sand")]
    [InlineData("sewellia-lineolata", "oxygen: very high", "oxygen: ordinary", "fast-water-grazers-stay-cool")]
    [InlineData("sewellia-lineolata", "flow: torrent", "flow: gentle", "fast-water-grazers-stay-cool")]
    [InlineData("sewellia-lineolata", "temperature: 20–24 °C", "temperature: 20–27 °C", "fast-water-grazers-stay-cool")]
    [InlineData("pangio-kuhlii", "lid: tight", "lid: yes", "slender-and-leaping-fishes-want-a-tight-lid")]
    [InlineData("poecilia-wingei", "lid: tight", "lid: no", "slender-and-leaping-fishes-want-a-tight-lid")]
    [InlineData("danio-rerio", "group: 8", "group: 3", "shoals-are-six-or-more")]
    [InlineData("polypterus-delhezi", "eats: [small fish, fry, shrimp]", "eats: [shrimp]", "hunters-say-whom-they-eat")]
    [InlineData("panaqolus-maccus", "needs: [wood, caves, shade]", "needs: [caves, shade]", "wood-raspers-need-wood")]
    [InlineData("trichopsis-pumila", "leaf litter, air space", "leaf litter", "air-breathers-need-air")]
    [InlineData("paracheirodon-axelrodi", "ph: 4.0–7.0", "ph: 7.0–8.0", "blackwater-is-soft-and-acid")]
    [InlineData("synodontis-petricola", "ph: 7.8–9.0", "ph: 6.0–7.5", "rift-lakes-are-alkaline")]
    [InlineData("dichotomyctere-nigroviridis", "ph: 7.5–8.5", "ph: 6.0–7.5", "brackish-water-is-hard-and-alkaline")]
    [InlineData(
        "nothobranchius-guentheri", "lifeSpan: 8–14 months", "lifeSpan: 4–6 years", "annual-killifishes-live-shortly")]
    [InlineData("pterophyllum-scalare", "volume: 375 L", "volume: 475 L", "volume-agrees-with-sides")]
    [InlineData("chromobotia-macracanthus", "length: 240 cm", "length: 75 cm", "tank-has-room-for-the-grown-fish")]
    [InlineData("hoplisoma-panda", "lifeSpan: 5–8 years", "lifeSpan: 5–8 months", "only-annual-fishes-live-for-months")]
    [InlineData("hoplisoma-panda", "lifeSpan: 5–8 years", "lifeSpan: 5–8 months", "life-span-suits-the-family")]
    [InlineData("hoplisoma-panda", "lifeSpan: 5–8 years", "lifeSpan: 5–80 years", "life-span-is-a-band")]
    [InlineData("paracheirodon-innesi", "lifeSpan: 4–6 years", "lifeSpan: 40–60 years", "life-span-suits-the-family")]
    [InlineData(
        "paracheirodon-innesi", "lifeSpan: 4–6 years", "lifeSpan: 40–60 years", "small-fishes-do-not-live-for-decades")]
    [InlineData("hoplisoma-panda", "volume: 75 L", "volume: 750 L", "volume-suits-the-length")]
    [InlineData("hoplisoma-panda", "group: 8", "group: 80", "groups-are-no-crowds")]
    [InlineData("hoplisoma-panda", "countryCode: [PE]", "countryCode: [PH]", "countries-suit-the-waters")]
    [InlineData("hoplisoma-panda", "countryCode: [PE]", "countryCode: [PE, NO]", "countries-suit-the-waters")]
    [InlineData("aphyosemion-australe", "countryCode: [GA, CG]", "countryCode: [GA, BR]", "countries-suit-the-waters")]
    [InlineData("hoplisoma-panda", "Isbrücker, 1971)", "Isbrücker, 1791)", "year-is-that-of-the-work")]
    [InlineData("chromobotia-macracanthus", "family: Botiidae", "family: Cobitidae", "family-is-that-of-the-genus")]
    public void The_wrong_way_round_is_told_at_its_line(string entry, string from, string to, string rule)
    {
        using var workshop = Copy();
        var path = $"content/species/{entry}.md";
        workshop.Replace(path, from, to);
        var line = 1 + File.ReadLines(workshop[path]).ToList().FindIndex(l => l.Contains(to, StringComparison.Ordinal));
        var found = Proof(workshop).Single(d => d.Values.GetValueOrDefault("rule") == rule);
        Assert.EndsWith($"/{entry}.md", found.Span.File, StringComparison.Ordinal);
        Assert.Equal(line, found.Span.Start.Line);
    }

    [Fact]
    public void The_collection_as_it_is_breaks_no_rule_that_it_does_not_waive()
    {
        using var workshop = Copy();
        Assert.Empty(Rules(workshop));
    }

    /// <summary>Every waiver of the collection gives a reason that is more than a word.</summary>
    [Fact]
    public void Waivers_are_few_and_give_their_reason()
    {
        var waivers = RealContent.Collection.Entries.SelectMany(e => e.Waived).ToList();
        Assert.InRange(waivers.Count, 1, 5);
        Assert.All(waivers, w => Assert.True(w.Reason.Split(' ').Length >= 8, w.Reason));
    }

    private static IEnumerable<Diagnostic> Rules(Workshop workshop) =>
        Proof(workshop).Where(d => d.Code.Id.StartsWith("PR", StringComparison.Ordinal) || d.Code.Id == "NM905");

    private static Workshop Copy()
    {
        var workshop = new Workshop();
        Directory.Delete(workshop["content"], recursive: true);
        Workshop.Copy(Repository.At("content"), workshop["content"]);
        return workshop;
    }

    private static IReadOnlyList<Diagnostic> Proof(Workshop workshop)
    {
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        var collection = bench.ReadCollection()!;
        bench.ProofByRules(collection);
        return bench.Bag.Sorted();
    }
}
