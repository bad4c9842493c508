using CareSheets.Pages.Stock;
using CareSheets.Proofing;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Stock;

/// <summary>The docket of an arrival and the notes for whoever presents it.</summary>
public sealed class DocketTests
{
    private const string Yaml = """
        supplier: Larkwater Imports
        date: 2026-11-24
        packed: 2026-11-23 16:00
        opened: 2026-11-24 18:00
        bags: [{ system: Soft water, temperature: 20 °C, ph: 6.4, ammonia: 5.15 mg/L as NH4 }]
        batches:
          - { line: 3, said: "zebra danio 30", entry: danio-rerio, count: 30, alive: 27, size: 2–3 cm TL, water: 20 L,
              system: Soft water, tank: A1, cause: Told the supplier. }
          - { line: 4, said: "zebra danio crowded", entry: danio-rerio, count: 30, size: 2–3 cm TL, water: 2 L,
              system: Soft water, days: 28 }
          - { line: 5, said: "Hemiodus sp.", count: 3, perhaps: [danio-margaritatus], unclear: ["sp.: which one"] }

        """;

    private static readonly Docket Docket = Toy().At<Docket>("papers/docket-2026-11-24-a.html");

    [Theory]
    [InlineData("count: 3", "63 fish promised")]
    [InlineData("unclear: [\"6 pr: pairs or fish\"]", "60 fish promised, and 1 line without a number")]
    public void A_number_that_nobody_knows_is_not_hidden_in_a_sum(string third, string promised)
    {
        const string asked = "count: 3, perhaps: [danio-margaritatus], unclear: [\"sp.: which one\"]";
        var docket = StockPageTests.With(("2026-11-24-a", Yaml.Replace(asked, third, StringComparison.Ordinal)))
            .At<Docket>("papers/docket-2026-11-24-a.html");
        Assert.Equal(promised, docket.Facts.Single(f => f.Label == "Lines").Note);
    }

    [Fact]
    public void Every_line_of_the_list_is_there_in_its_own_words_the_most_urgent_first()
    {
        Assert.Equal(3, Docket.Lines.Count);
        Assert.Equal(["1", "2", "3"], Docket.Lines.Select(l => l.Place));
        Assert.Equal("Line 4: zebra danio crowded", Docket.Lines[0].Said);
        Assert.Contains(Docket.Lines, l => l.Said == "Line 3: zebra danio 30");
        Assert.Contains(Docket.Lines, l => l is { Said: "Line 5: Hemiodus sp.", VernacularName: "Nobody knows yet" });
    }

    [Fact]
    public void The_place_in_the_order_has_its_reasons()
    {
        var why = Docket.Lines[0].Facts.Single(f => f.Label == "Why here");
        // 30 fish of 3 cm and 0.316 g each (0.0112 × 3^3.04) in 2 L; 20 °C is 2.5 °C from the middle of 18–27 °C.
        Assert.Equal(
            "about 4.7 g of fish in a litre, closed for 26 hours, 2.5\u00A0°C from the middle of its range", why.Value);
        Assert.Equal("", why.Note);
        var unknown = Docket.Lines.Single(l => l.ScientificName.Length == 0);
        Assert.Equal(
            "the rest counts as the worst of this arrival",
            unknown.Facts.Single(f => f.Label == "Why here").Note);
    }

    [Fact]
    public void A_batch_waits_with_the_longest_watch_in_its_water()
    {
        var sold = Docket.Lines.Single(l => l.Said.EndsWith("zebra danio 30", StringComparison.Ordinal))
            .Facts.Single(f => f.Label == "Sold from");
        Assert.Equal(
            ("22 December 2026", "with zebra danio of Larkwater Imports, 24 November 2026"),
            (sold.Value, sold.Note));
        Assert.Equal("Soft water", Assert.Single(Docket.Systems).Label);
    }

    [Fact]
    public void What_died_stands_out_and_what_is_not_counted_is_left_to_be_filled_in()
    {
        var counted = Docket.Lines.Single(l => l.Said.EndsWith("zebra danio 30", StringComparison.Ordinal));
        Assert.Equal(
            "3 dead in the bag and 0 more within 7 days: 10 % of 30. Look for the cause and ask a vet.",
            counted.Alarm[^1].Text);
        Assert.Equal(("30", "27"), (counted.Promised, counted.Alive));
        Assert.Equal(("30", ""), (Docket.Lines[0].Promised, Docket.Lines[0].Alive));
    }

    [Fact]
    public void A_line_that_nobody_knows_has_its_guesses_and_what_it_leaves_open()
    {
        var facts = Docket.Lines.Single(l => l.ScientificName.Length == 0).Facts;
        Assert.Equal("Danio margaritatus", facts.Single(f => f.Label == "Perhaps").Value);
        Assert.Equal("sp.: which one", facts.Single(f => f.Label == "Left open").Value);
    }

    /// <summary>
    /// 5.15 mg/L as NH₄ is 4 mg/L as N (check of the kit's basis). The sums are those of the water room and tested
    /// there; here it counts that the docket says them, with limit and source, and what was not measured.
    /// </summary>
    [Fact]
    public void A_measured_bag_has_its_advice_with_the_sum_the_limit_and_its_source()
    {
        var bag = Assert.Single(Docket.Bags);
        Assert.Equal("5.15 mg/L as NH₄", bag.Facts.Single(f => f.Label == "Total ammonia").Value);
        Assert.StartsWith(
            "Float it sealed, then move the fish at once; none of its water comes along. " +
            "Opened, its un-ionised ammonia could reach ", bag.Advice, StringComparison.Ordinal);
        Assert.Contains("above the 0.05 mg/L as NH₃ that harm.", bag.Advice, StringComparison.Ordinal);
        Assert.Contains("IFAS", bag.Reasons[0], StringComparison.Ordinal);
        Assert.Contains("The system is 5.0\u00A0°C warmer than the bag: float it about 35 minutes.", bag.Reasons);
        Assert.Contains("Not all was measured, so the figures are spans.", bag.Reasons);
    }

    [Fact]
    public void A_bag_of_which_nothing_is_known_is_opened_with_the_greatest_care()
    {
        var toy = StockPageTests.With(("a", """
            supplier: Larkwater Imports
            date: 2026-11-24
            bags: [{ system: Soft water }]
            batches: [{ said: zebras, entry: danio-rerio }]

            """));
        var bag = Assert.Single(toy.At<Docket>("papers/docket-a.html").Bags);
        Assert.Equal(
            "Not enough is measured for a sum: float it sealed, then move the fish at once.", bag.Advice);
    }

    [Fact]
    public void A_system_that_does_not_suit_the_species_stands_out_with_the_reason()
    {
        var lines = StockPageTests.With(("a", """
            supplier: Larkwater Imports
            date: 2026-11-24
            batches:
              - { said: chosen, entry: danio-rerio, system: Soft water }
              - { said: open, entry: danio-rerio }

            """)).At<Docket>("papers/docket-a.html").Lines;
        Assert.Equal(
            "Soft water does not suit it. pH 6.2 (kept at 6.5–8.0).",
            Assert.Single(lines.Single(l => l.Said == "chosen").Alarm).Text);
        var water = Assert.Single(lines.Single(l => l.Said == "open").Waters);
        Assert.Equal(
            ("Does not suit it", "Soft water: pH 6.2 (kept at 6.5–8.0)"), (water.Label, water.Value));
    }

    /// <summary>Appendix II of CITES, by the list in the real content; the name is read out of a raw line.</summary>
    [Fact]
    public void A_regulated_name_stands_out_even_where_nobody_knows_the_line()
    {
        var docket = RealSite.Pages["papers/docket-2026-11-24-larkwater-imports.html"];
        var zebra = docket.QuerySelectorAll(".docket-line").Single(l =>
            l.QuerySelector("i[lang=la]")?.TextContent == "Hypancistrus zebra");
        Assert.Contains("CITES", zebra.QuerySelector(".docket-line__alarm")!.TextContent, StringComparison.Ordinal);

        var toy = ToySite.Read(change: w =>
        {
            Workshop.Copy(Repository.At("content", "regulations"), w["content/regulations"]);
            w.Write("content/store.yaml", File.ReadAllText(w["content/store.yaml"]) + "jurisdiction: GB-ENG\n");
            w.Write("content/arrivals/a.yaml", """
                supplier: Larkwater Imports
                date: 2026-11-24
                batches:
                  - { said: "L46;HYPANCISTRUS ZEBRA;4cm;6" }
                  - { said: "Hemiodus spec. redtail" }

                """);
        });
        var lines = toy.At<Docket>("papers/docket-a.html").Lines;
        var alarm = Assert.Single(lines.Single(l => l.Said.StartsWith("L46", StringComparison.Ordinal)).Alarm).Text;
        Assert.StartsWith("If it is Hypancistrus zebra. ", alarm, StringComparison.Ordinal);
        Assert.Contains("Confirm with the authority", alarm, StringComparison.Ordinal);
        Assert.Empty(lines.Single(l => l.Said.StartsWith("Hemiodus", StringComparison.Ordinal)).Alarm);
    }

    /// <summary>Their order is the proofing room's; here it counts that whoever opens the bag reads them all.</summary>
    [Fact]
    public void Inherited_hazards_stand_before_all_other_cautions()
    {
        var lines = RealSite.Pages["papers/docket-2026-11-24-larkwater-imports.html"].QuerySelectorAll(".docket-line");
        var hazards = RealContent.Collection.Practice.Hazards;
        var known = lines.Where(l => l.QuerySelector("i[lang=la]") is not null).ToList();
        Assert.Equal(8, known.Count);
        Assert.All(known, line =>
        {
            var name = line.QuerySelector("i[lang=la]")!.TextContent;
            var entry = RealContent.Collection.Entries.Single(e => e.ScientificName.Value.ToString() == name);
            Assert.Equal(
                CautionsOf.Entry(entry, hazards).Select(c => c.Brief),
                line.QuerySelectorAll(".caution-list__item").Select(c => c.TextContent));
        });
        Assert.Contains(known, l => CautionsOf.Inherited(RealContent.Collection.Entries.Single(e =>
            e.ScientificName.Value.ToString() == l.QuerySelector("i[lang=la]")!.TextContent), hazards).Any());
    }

    [Fact]
    public void A_docket_is_for_staff_and_is_reached_from_the_papers()
    {
        Assert.False(Docket.Frame.IsListed);
        var paper = Assert.Single(Toy().At<CareSheets.Pages.PapersPage>("papers/index.html").Arrivals);
        Assert.Equal("../papers/docket-2026-11-24-a.html", paper.DocketHref);
        Assert.Equal("../papers/notes-2026-11-24-a.html", paper.NotesHref);
    }

    [Fact]
    public void The_notes_name_each_species_once_and_none_that_nobody_knows()
    {
        var notes = Toy().At<TalkingNotes>("papers/notes-2026-11-24-a.html");
        var species = Assert.Single(notes.Species);
        Assert.Equal(("1", "zebra danio"), (species.Place, species.VernacularName));
        Assert.Equal("Nothing in its figures sets it apart from the others here; let its looks speak.",
            Assert.Single(species.Tellings).Text);
    }

    [Fact]
    public void On_the_real_content_every_telling_shows_the_figure_that_it_rests_on()
    {
        var notes = RealSite.Pages.Where(p => p.Key.StartsWith("papers/notes-", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, notes.Count);
        var tellings = notes.SelectMany(n => n.Value.QuerySelectorAll(".talk__telling")).ToList();
        Assert.True(tellings.Count >= 40, $"Only {tellings.Count} tellings.");
        Assert.All(tellings, t => Assert.NotEqual("", t.QuerySelector(".talk__figure")?.TextContent ?? ""));
    }

    private static ToySite Toy() => StockPageTests.With(("2026-11-24-a", Yaml));
}
