using CareSheets.Commands;
using CareSheets.Names;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Tankmates;
using CareSheets.Tests.Support;
using Newtonsoft.Json.Linq;

namespace CareSheets.Tests.Relatives;

/// <summary>Drafts of species that have no entry yet, from the repository's own collection.</summary>
public sealed class DraftTests
{
    private static readonly RelativesEngine Engine = RelativesEngine.Ask(RealContent.Collection);

    [Fact]
    public void Words_stand_in_the_schemas_order_from_harmless_to_grave()
    {
        var schema = JObject.Parse(File.ReadAllText(Repository.At("schema", "entry.schema.json")));
        foreach (var (path, words) in DraftMaker.Graver)
        {
            var parts = path.Split('.');
            var declared = schema["properties"]![parts[0]]!["properties"]![parts[1]]!["enum"]!.Values<string>();
            Assert.Equal(declared, words);
        }
    }

    [Fact]
    public void The_careful_end_is_never_milder_than_a_relative()
    {
        var draft = Draft("Danio", "Danionidae", "Cypriniformes");
        var near = RealContent.Collection.Entries.Where(e => e.Genus == "Danio").ToList();
        var words = DraftMaker.Graver["adult.mouth"].ToList();
        Assert.True(near.Count > 1);
        Assert.All(near, e => Assert.True(
            words.IndexOf(draft.At("adult.mouth")!.Text) >= words.IndexOf(e.Adult.Mouth.Value)));
    }

    [Theory]
    [InlineData("Danio", "Danionidae", "Cypriniformes")]
    [InlineData("Hypancistrus", "Loricariidae", "Siluriformes")] // one lives alone, one in a group of five
    [InlineData("Synodontis", "Mochokidae", "Siluriformes")]
    public void The_group_is_the_largest_of_those_that_live_in_the_manner_that_is_drafted(
        string genus, string family, string order)
    {
        var draft = Draft(genus, family, order);
        var alike = RealContent.Collection.Entries
            .Where(e => e.Genus == genus && e.Company.Lives.Value == draft.At("company.lives")!.Text).ToList();
        Assert.Equal(
            alike.Max(e => e.Company.Group.Value).ToString(System.Globalization.CultureInfo.InvariantCulture),
            draft.At("company.group")!.Text);
    }

    [Fact]
    public void A_genus_of_loners_and_groups_drafts_no_loner_in_a_group()
    {
        var draft = Draft("Hypancistrus", "Loricariidae", "Siluriformes");
        Assert.Equal(("alone", "1"), (draft.At("company.lives")!.Text, draft.At("company.group")!.Text));
    }

    /// <summary>A small catfish of a new genus: by its large end alone an angelfish could not eat it.</summary>
    [Fact]
    public void The_length_is_careful_at_both_ends_for_tanks_are_filled_by_one_and_prey_by_the_other()
    {
        var draft = Draft("Novum", "Callichthyidae", "Siluriformes");
        var length = QuantityText.Parse(draft.At("adult.length")!.Text, DimensionCatalogue.Length, true).Value;
        var sure = EstimateMaker.ForNew(Engine, draft.Place, "adult.length")!.Range!.Sure;
        Assert.True(length.Low <= sure.Low && length.High >= sure.High && length.Low > sure.Low - 1, length.Text);
        var angelfish = Tankmate.Of(
            RealContent.Collection.Find("pterophyllum-scalare")!, RealContent.Collection, Engine.Suggest).Body;
        Verdict Eaten(Stretch size) => Predation.Judge(
            angelfish, new Body(size, LengthBasis.Total, BodyShape.Fusiform, Mouth.Small, Appetite.None));
        Assert.Equal(Verdict.Suits, Eaten(Stretch.Exactly(length.High!.Value)));
        Assert.NotEqual(Verdict.Suits, Eaten(Stretch.From(length)));
    }

    [Fact]
    public void Origin_laws_and_cautions_are_never_inferred()
    {
        var draft = Draft("Danio", "Danionidae", "Cypriniformes");
        Assert.DoesNotContain(draft.Values, v => v.Path.StartsWith("origin", StringComparison.Ordinal));
        Assert.DoesNotContain(draft.Values, v => v.Path.StartsWith("cautions", StringComparison.Ordinal));
        var fields = DraftText.Print(draft).Split('\n').Where(l => !l.StartsWith('#')).ToList();
        Assert.DoesNotContain(fields, l => l.Contains("countryCode", StringComparison.Ordinal));
        foreach (var duty in new[] { "origin", "laws", "venom", "lifeSpan", "foods", "habits", "tank.needs" })
            Assert.Contains(draft.Missing, m => m.Contains(duty, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Danio", "Danionidae", "Cypriniformes", "silence means fresh water")]
    [InlineData("Carinotetraodon", "Tetraodontidae", "Tetraodontiformes", "Dichotomyctere nigroviridis does")]
    public void Salt_is_asked_for_with_the_relative_that_needs_it(
        string genus, string family, string order, string why) => Assert.Contains(
        Draft(genus, family, order).Missing,
        m => m.StartsWith("care.salinity", StringComparison.Ordinal) && m.Contains(why, StringComparison.Ordinal));

    [Theory]
    [InlineData("Danio", "Danionidae", "Cypriniformes")]
    [InlineData("Novum", "Danionidae", "Cypriniformes")]
    [InlineData("Novum", "Loricariidae", "Siluriformes")]
    public void A_draft_passes_the_schema_and_is_told_as_a_draft_only(string genus, string family, string order)
    {
        using var workshop = new Workshop();
        var name = ScientificName.Parse($"{genus} novissimum")!;
        var draft = DraftMaker.Make(Engine, name, new NewPlace(genus, family, order));
        workshop.Write($"content/species/{name.Slug}.md", DraftText.Print(draft));
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        bench.ReadCollection();
        var found = bench.Bag.Sorted().Where(d => d.Span.File.EndsWith($"{name.Slug}.md", StringComparison.Ordinal));
        Assert.Equal("RD123", Assert.Single(found).Code.Id);
        Assert.Contains("evidence: from relatives", File.ReadAllText(workshop[$"content/species/{name.Slug}.md"]),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_that_is_called_finished_with_nothing_written_is_an_error()
    {
        using var workshop = new Workshop();
        var name = ScientificName.Parse("Danio novissimus")!;
        var text = DraftText.Print(Draft("Danio", "Danionidae", "Cypriniformes"));
        workshop.Write($"content/species/{name.Slug}.md", text.Replace("draft: true\n", "", StringComparison.Ordinal));
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        bench.ReadCollection();
        Assert.Contains(bench.Bag.Sorted(), d => d.Code.Id == "RD125");
    }

    [Theory]
    [InlineData("formerNames")]
    [InlineData("adult.sexes")]
    [InlineData("adult.fins")]
    [InlineData("active.when")]
    [InlineData("company.neighbours")]
    public void What_relatives_cannot_tell_is_listed_as_missing(string field) => Assert.Contains(
        Draft("Danio", "Danionidae", "Cypriniformes").Missing,
        m => m.StartsWith($"{field}: ", StringComparison.Ordinal));

    private static Draft Draft(string genus, string family, string order) => DraftMaker.Make(
        Engine, ScientificName.Parse($"{genus} novissimus")!, new NewPlace(genus, family, order));
}
