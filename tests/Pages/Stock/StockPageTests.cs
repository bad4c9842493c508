using CareSheets.Pages;
using CareSheets.Pages.Stock;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Stock;

/// <summary>What customers are told of arrivals, on the page of new ones and on the page of a species.</summary>
public sealed class StockPageTests
{
    private const string Zebras = """
        supplier: Larkwater Imports
        date: 2026-11-24
        batches:
          - { said: zebras, entry: danio-rerio, count: 30, alive: 28, size: 2–3 cm TL, sex: male, strain: leopard,
              place: Wrenholt, provenance: bred, price: 2.4, losses: [{ date: 2026-11-25, count: 3 }] }
          - { said: who knows, count: 3, alive: 3 }
          - { said: galaxy, entry: danio-margaritatus, count: 5, alive: 5, gone: 2026-11-25 }

        """;

    private const string Bettas = """
        supplier: Oldmere
        date: 2026-12-01
        batches:
          - { said: bettas, entry: betta-splendens, count: 6, price: 12 }

        """;

    private static readonly ToySite Toy = With(("2026-11-24-a", Zebras), ("2026-12-01-b", Bettas));

    [Fact]
    public void A_batch_is_told_with_its_source_its_number_its_price_and_the_day_it_is_sold_from()
    {
        var group = Assert.Single(Toy.At<NewArrivalsPage>("new-arrivals.html").Here);
        Assert.Equal(("2026-11-24-a", "Came in on 24 November 2026"), (group.Id, group.Heading));
        var line = Assert.Single(group.Batches); // nobody knows the second, and the third are gone
        Assert.Equal("zebra danio", line.VernacularName);
        Assert.Equal(new Link("Danio rerio", "species/danio-rerio.html", true), line.Species);
        Assert.Equal("“leopard”, 2–3 cm (about 0.8–1.2 in) with its tail, males", line.Kind);
        Assert.Equal("bred in aquaria, Wrenholt", line.Source);
        Assert.Equal("25 counted", line.Count);
        Assert.Equal("sold from 8 December 2026", line.Release);
        Assert.Equal("2.40 per fish", line.Price); // the toy shop names no currency
    }

    [Theory]
    [InlineData("EB: a mark, an author or a place", "EB", "leopard", "bred in aquaria", "“leopard”, males")]
    [InlineData("leopard: a strain or a species", "Wrenholt", "leopard", "bred in aquaria, Wrenholt", "males")]
    [InlineData("M: male or medium", "Wrenholt", "leopard", "bred in aquaria, Wrenholt", "“leopard”")]
    [InlineData("6: six of them", "Wrenholt", "leopard", "bred in aquaria, Wrenholt", "“leopard”, males")]
    public void What_the_list_leaves_open_is_not_told_to_customers(
        string open, string place, string strain, string source, string kind)
    {
        var line = Assert.Single(Assert.Single(With(("2026-11-24-a", $$"""
            supplier: Larkwater Imports
            date: 2026-11-24
            batches:
              - { said: zebras, entry: danio-rerio, alive: 28, unclear: ["{{open}}"], sex: male, strain: {{strain}},
                  place: {{place}}, provenance: bred }

            """)).At<NewArrivalsPage>("new-arrivals.html").Here).Batches);
        Assert.Equal((source, kind), (line.Source, line.Kind));
    }

    [Fact]
    public void What_is_on_its_way_is_told_apart_and_without_a_number()
    {
        var group = Assert.Single(Toy.At<NewArrivalsPage>("new-arrivals.html").Coming);
        Assert.Equal("Expected on 1 December 2026", group.Heading);
        Assert.Equal(("Siamese fighting fish", ""), (group.Batches[0].VernacularName, group.Batches[0].Count));
    }

    [Fact]
    public void An_arrival_that_is_half_unpacked_stands_in_both_lists_under_two_ids()
    {
        var half = Zebras.Replace("count: 3, alive: 3", "entry: betta-splendens, count: 3", StringComparison.Ordinal);
        var page = With(("2026-11-24-a", half)).At<NewArrivalsPage>("new-arrivals.html");
        Assert.Equal(("2026-11-24-a", "coming-2026-11-24-a"), (page.Here[0].Id, page.Coming[0].Id));
    }

    [Fact]
    public void The_page_of_a_species_tells_what_is_in_and_others_tell_nothing()
    {
        var fact = Assert.Single(Toy.Species("danio-rerio").Stock);
        Assert.Equal("Since 24 November 2026", fact.Label);
        Assert.StartsWith("25 counted, “leopard”", fact.Value, StringComparison.Ordinal);
        Assert.Equal("sold from 8 December 2026", fact.Note);
        Assert.Empty(Toy.Species("danio-margaritatus").Stock);
        Assert.Empty(Toy.Species("betta-splendens").Stock); // still on its way
    }

    [Fact]
    public void Customers_are_not_told_who_the_supplier_is()
    {
        var page = Toy.At<NewArrivalsPage>("new-arrivals.html");
        Assert.All(page.Here.Concat(page.Coming).SelectMany(g => g.Batches).SelectMany(b =>
            new[] { b.Kind, b.Source, b.Count, b.Release, b.Price }), text =>
            Assert.DoesNotContain("Larkwater", text, StringComparison.Ordinal));
    }

    [Fact]
    public void New_is_what_came_within_six_weeks_before_the_newest_whatever_day_it_is()
    {
        var old = Zebras.Replace("2026-11-24", "2026-10-13", StringComparison.Ordinal);
        var edge = Zebras.Replace("2026-11-24", "2026-10-14", StringComparison.Ordinal);
        var page = With(("a", Zebras), ("b", old), ("c", edge)).At<NewArrivalsPage>("new-arrivals.html");
        Assert.Equal(["a", "c"], page.Here.Select(g => g.Id));
    }

    [Fact]
    public void A_shop_without_arrivals_says_so()
    {
        var page = ToySite.Read().At<NewArrivalsPage>("new-arrivals.html");
        Assert.Empty(page.Here);
        Assert.Equal("Nothing has come in lately.", page.Nothing);
    }

    internal static ToySite With(params (string Name, string Yaml)[] arrivals) => ToySite.Read(change: w =>
    {
        w.Write("content/store.yaml", File.ReadAllText(w["content/store.yaml"]) +
            "systems: [{ name: Soft water, temperature: 25 °C, ph: 6.2 }]\n");
        foreach (var (name, yaml) in arrivals)
            w.Write($"content/arrivals/{name}.yaml", yaml);
    });
}
