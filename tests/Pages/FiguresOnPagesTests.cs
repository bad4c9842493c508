using System.Text.RegularExpressions;
using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Quantities;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>
/// Figures as pages show them in each unit system. °F = °C × 1.8 + 32; 1 in = 2.54 cm; 1 US gal =
/// 3.785411784 L (NIST SP 811, 2008, appendix B.8); 1 °dH = 17.848 ppm CaCO₃ (from memory).
/// </summary>
public sealed class FiguresOnPagesTests
{
    private const string Danio = "content/species/danio-rerio.md";
    private static readonly ToySite Both = ToySite.Read();

    [Theory]
    [InlineData("18–27 °C", "18–27 °C", "65–80 °F")] // 64.4 and 80.6, inward
    [InlineData("20–25 °C", "20–25 °C", "68–77 °F")] // exact
    [InlineData("72–78 °F", "22.5–25.5 °C", "72–78 °F")] // 22.22 and 25.56, inward
    [InlineData("22-26 C", "22–26 °C", "72–78 °F")] // 71.6 and 78.8
    [InlineData("> 20 °C", "> 20 °C", "> 68 °F")]
    [InlineData("24 °C", "24 °C", "about 75 °F")] // 75.2
    public void The_shops_system_comes_first_and_the_one_not_typed_is_rounded_inward(
        string typed, string first, string second)
    {
        var row = ToySite.Read(change: w => w.Replace(Danio, "temperature: 18–27 °C", $"temperature: {typed}"))
            .Row("danio-rerio", "Temperature");
        Assert.Equal((first, second), (row.First, row.Second));
    }

    [Theory]
    [InlineData(UnitSystem.Both, "20–25 °C", "68–77 °F")]
    [InlineData(UnitSystem.Metric, "20–25 °C", "")]
    [InlineData(UnitSystem.US, "68–77 °F", "")]
    public void One_system_shows_one_figure(UnitSystem units, string first, string second)
    {
        var row = ToySite.Read(units).Row("danio-margaritatus", "Temperature");
        Assert.Equal((first, second), (row.First, row.Second));
    }

    [Theory]
    [InlineData(UnitSystem.Both, "4.5 cm (1.8 in)", "80 cm long, 100 L", "31.5 in long, 30 US gal")]
    [InlineData(UnitSystem.Metric, "4.5 cm", "80 cm long, 100 L", "")]
    [InlineData(UnitSystem.US, "1.8 in", "31.5 in long, 30 US gal", "")] // 1.77 in; 31.5 in; 26.4 gal: upward
    public void Fish_and_tank_are_rounded_upward(UnitSystem units, string fish, string tank, string other)
    {
        var room = ToySite.Read(units).Species("danio-rerio").Room;
        Assert.Equal(fish, room.Single(f => f.Label == "Grown length").Value);
        var smallest = room.Single(f => f.Label == "Smallest tank");
        Assert.Equal((tank, other), (smallest.Value, smallest.Note));
    }

    [Fact]
    public void A_tank_with_more_sides_shows_them_all()
    {
        var toy = ToySite.Read(change: w => w.Replace(
            Danio, "{ length: 80 cm,", "{ length: 80 cm, width: 40 cm, height: 40 cm,"));
        Assert.Equal(
            new Fact("Smallest tank", "80 cm × 40 cm × 40 cm, 100 L", "31.5 in × 16 in × 16 in, 30 US gal"),
            toy.Species("danio-rerio").Room.Single(f => f.Label == "Smallest tank"));
    }

    [Fact]
    public void Acidity_is_the_same_everywhere_and_stands_once()
    {
        var row = Both.Row("danio-rerio", "pH");
        Assert.Equal(("6.5–8.0", ""), (row.First, row.Second));
    }

    [Fact]
    public void A_life_span_is_spelt_out()
    {
        var toy = ToySite.Read(change: w => w.Replace(Danio, "mouth: small }", "mouth: small, lifeSpan: 3–5 years }"));
        Assert.Equal("3–5 years", toy.Species("danio-rerio").Room.Single(f => f.Label == "Life span").Value);
    }

    [Fact]
    public void The_same_figures_stand_on_page_sheet_and_card()
    {
        var page = Both.Species("danio-rerio");
        var sheet = Both.At<HomeSheet>("papers/sheet-danio-rerio.html");
        var card = Both.At<TankCard>("papers/card-danio-rerio.html");
        Assert.Equal(
            page.Water.Select(r => (r.Label, r.First, r.Second)),
            sheet.Water.Select(r => (r.Label, r.First, r.Second)));
        var onCard = string.Join(' ', card.Leaf.Cards[0].Texts.Select(t => t.Text));
        Assert.All(page.Water.Take(3), row =>
        {
            Assert.Contains(row.First, onCard, StringComparison.Ordinal);
            Assert.Contains(row.Second, onCard, StringComparison.Ordinal);
        });
        Assert.Equal(page.Room, sheet.Room);
        var tank = page.Room.Single(f => f.Label == "Smallest tank");
        Assert.Contains(tank.Value, onCard, StringComparison.Ordinal);
        Assert.Contains(tank.Note, onCard, StringComparison.Ordinal);
        Assert.Equal(page.Reviewed, sheet.Reviewed);
        Assert.Contains("2 October 2026", onCard, StringComparison.Ordinal);
    }

    [Fact]
    public void A_species_that_fights_its_own_kind_is_one_only() =>
        Assert.Equal(("one only", "fierce to its own kind"), Group("betta-splendens", "lives: alone"));

    [Theory]
    [InlineData("own kind: territorial", "one", "alone")]
    [InlineData("own kind: peaceful", "one", "alone")]
    [InlineData("lives: pair", "can live alone", "as a pair")]
    [InlineData("group: 4", "at least 4", "alone")]
    public void A_species_that_lives_alone_is_one(string field, string value, string note) =>
        Assert.Equal((value, note), Group("betta-splendens", field));

    /// <param name="field">A field of the company's one line, with the value that it is given.</param>
    private static (string Value, string Note) Group(string species, string field)
    {
        var file = $"content/species/{species}.md";
        var before = new Regex($"(?<=^company: .*){field.Split(':')[0]}: [^,}}]*", RegexOptions.Multiline);
        var group = ToySite.Read(change: w =>
            {
                Assert.Single(before.Matches(File.ReadAllText(w[file])));
                w.Write(file, before.Replace(File.ReadAllText(w[file]), field));
            })
            .Species(species).Room.Single(f => f.Label == "Company of its own kind");
        return (group.Value, group.Note);
    }
}
