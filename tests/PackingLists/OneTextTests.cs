using CareSheets.PackingLists;

namespace CareSheets.Tests.PackingLists;

/// <summary>
/// Lists of one text column, in the words that suppliers use. No line that may be fish is lost, and no number is
/// taken for that of the fish unless it can be nothing else.
/// </summary>
public sealed class OneTextTests
{
    [Theory]
    [InlineData("L46 Hypancistrus zebra 4cm CB 6 @ 95.00", "hypancistrus-zebra", 6, "", "95.00")]
    [InlineData("Danio rerio 3cm 5pcs 95,00", "danio-rerio", 5, "", "95,00")]
    [InlineData("Danio rerio 2.5cm  60   @ 0.95", "danio-rerio", 60, "", "0.95")]
    [InlineData("Danio rerio 3cm 60 £0.95 each", "danio-rerio", 60, "", "£0.95")]
    [InlineData("Danio rerio 3cm 60 EUR 0,95 = 57,00", "danio-rerio", 60, "", "EUR 0,95")]
    [InlineData("Danio rerio 3cm 60 1,05", "danio-rerio", 60, "", "1,05")]
    [InlineData("Danio rerio 3cm 60 at 1", "danio-rerio", 60, "", "1")]
    [InlineData("Danio rerio 3cm 60 @ 2 = 120", "danio-rerio", 60, "", "2")]
    [InlineData("Danio rerio 3-4cm x 50", "danio-rerio", 50, "", "")]
    [InlineData("Danio rerio 3cm 3 x 100", "danio-rerio", 300, "", "")]
    [InlineData("2 x 50 Danio rerio 3cm", "danio-rerio", 100, "", "")]
    [InlineData("4 bags of 25 Danio rerio", "danio-rerio", 100, "", "")]
    [InlineData("Danio rerio 2-3 cm 150pcs/bag 2 bags", "danio-rerio", 300, "", "")]
    [InlineData("Danio rerio 4cm x 20", "danio-rerio", 20, "", "")]
    [InlineData("Danio rerio 2cm 1.000", "danio-rerio", 1000, "", "")]
    [InlineData("Danio rerio 1 000", "danio-rerio", 1000, "", "")]
    [InlineData("1,000 Danio rerio 1.5 cm", "danio-rerio", 1000, "", "")]
    [InlineData("Danio rerio 2,5-3cm 1,200 pcs", "danio-rerio", 1200, "", "")]
    [InlineData("Danio rerio 5-6 cm 4m/8f", "danio-rerio", 12, "mixed", "")]
    [InlineData("Danio rerio 5-6 cm 1m/2f", "danio-rerio", 3, "trios", "")]
    [InlineData("Danio rerio 3cm 50 CB", "danio-rerio", 50, "", "")]
    public void A_number_that_can_only_be_that_of_the_fish_is_read(
        string said, string entry, int count, string sex, string price)
    {
        var line = ReadList.Line(said);
        Assert.NotNull(line);
        Assert.Equal((entry, count, sex, price), (line.Entry, line.Line.Count, line.Line.Sex, line.Line.Price));
        Assert.Empty(line.Line.Unclear);
    }

    [Theory]
    [InlineData("12 pr Betta imbellis", "betta-imbellis", "12 pr: 12 pairs, or 12 fish")]
    [InlineData("Betta imbellis 25 prs", "betta-imbellis", "25 prs: 25 pairs, or 25 fish")]
    [InlineData("Danio rerio 3cm 12 nice", null, "how many")]
    [InlineData("Danio rerio 3cm 20m", null, "how many")]
    [InlineData("Danio rerio 3cm", "danio-rerio", "how many")]
    [InlineData("100 Danio rerio 3cm", "danio-rerio", "how many: 100, or that is the number of the line")]
    [InlineData("4 bags Danio rerio 100", null, "how many: 100, or 100 in each bag")]
    [InlineData("2 x 50 Danio rerio 3cm 90", "danio-rerio", "how many: 100, or 90")]
    [InlineData("Danio rerio 3cm 100 2", null, "how many")]
    [InlineData("Danio rerio 3cm 100 Box 2", null, "how many")]
    public void Any_other_is_asked(string said, string? entry, string question)
    {
        var line = ReadList.Line(said);
        Assert.NotNull(line);
        Assert.Equal((null, question), (line.Line.Count, line.Line.Unclear is [var first, ..] ? first : ""));
        if (entry is not null)
            Assert.Equal(entry, line.Entry);
    }

    [Theory]
    [InlineData("L46")]
    [InlineData("Electric eel")]
    [InlineData("Green spotted puffer  3cm  12   FW")]
    [InlineData("Senegal bichir albino 8 cm 5  6.50")]
    [InlineData("Synodontis eupterus  featherfin  2.5 in  8  2.95")]
    [InlineData("Silver arowana, please ask 10cm 1 of them")]
    [InlineData("Astyanax")]
    [InlineData("Nobodius inventus")]
    [InlineData("Nobody's fish 4cm")]
    [InlineData("Ember tetrsa")]
    [InlineData("Cherry barbs, box 3")]
    [InlineData("Kuhli loach 6cm 40   KHULI")]
    [InlineData("*** L46 zebra pleco ***")]
    public void A_line_that_may_be_fish_is_asked_and_never_left_out(string said) =>
        Assert.NotNull(ReadList.Line(said));

    [Theory]
    [InlineData("*** TETRAS & BARBS ***", SkipReason.Heading)]
    [InlineData("*** L-NUMBERS / CATFISH ***", SkipReason.Heading)]
    [InlineData("-- LIVEBEARERS --", SkipReason.Heading)]
    [InlineData("Welse und Schmerlen", SkipReason.Heading)]
    [InlineData("Description", SkipReason.Heading)]
    [InlineData("sub total 463", SkipReason.NotFish)]
    [InlineData("Total tetras 500", SkipReason.NotFish)]
    [InlineData("TOTAL PCS  2791   Boxes 9", SkipReason.NotFish)]
    [InlineData("Freight 38,00", SkipReason.NotFish)]
    [InlineData("Thank you for your business!  No DOA claims after 2 h", SkipReason.Remark)]
    [InlineData("Vielen Dank für Ihren Auftrag", SkipReason.Remark)]
    [InlineData("All fish stand with us for seven days before they leave.", SkipReason.Remark)]
    [InlineData("Soft water", SkipReason.NoSign)]
    public void Only_a_positive_sign_makes_a_line_no_fish(string said, SkipReason reason)
    {
        var list = ReadList.Of($"Description\nDanio rerio 3cm 10\nBetta splendens 5cm 4\n{said}\n").List;
        Assert.Equal(reason, Assert.Single(list.Skipped).Reason);
    }

    [Fact]
    public void No_line_of_fish_is_taken_for_the_headings() => Assert.Equal(
        ["danio-rerio", null, "betta-splendens"],
        ReadList.Of("Danio rerio 10\nAngel fish marble 6\nBetta splendens 4\n").List.Lines.Select(l => l.Entry));

    [Fact]
    public void A_comma_that_only_divides_numbers_is_that_of_decimals() => Assert.Equal(
        [("danio-rerio", 50), ("betta-splendens", 4)],
        ReadList.Of("Description\nDanio rerio 3cm 50 0,40\nBetta splendens 5cm 4 3,20\n").List.Lines
            .Select(l => (l.Entry!, l.Line.Count!.Value)));

    [Fact]
    public void Beside_a_box_or_a_price_the_count_stands_in_the_text_all_the_same() => Assert.Equal(
        [("danio-rerio", 100, "0,40 EUR"), ("betta-splendens", 4, "3,20 EUR")],
        ReadList.Of("Description;Box;Price EUR\nDanio rerio 3cm 100;1;0,40\nBetta splendens 4;2;3,20\n").List.Lines
            .Select(l => (l.Entry!, l.Line.Count!.Value, l.Line.Price)));

    [Theory]
    [InlineData("Zebra 10", "danio-rerio")]
    [InlineData("Krib 10", "pelvicachromis-pulcher")]
    public void A_part_of_a_customers_name_offers_all_that_have_it(string said, string entry) =>
        Assert.Contains(entry, ReadList.Line(said)!.Likely.Select(c => c.Species.Key));

    [Fact]
    public void A_word_of_the_trade_behind_a_name_hides_no_species() => Assert.Equal(
        "synodontis-eupterus", ReadList.Line("Synodontis eupterus featherfin 2.5 in 8")!.Likely.First().Species.Key);

    [Fact]
    public void A_list_of_one_column_needs_no_heading() => Assert.Equal(
        3, ReadList.Of("Oldmere\nDanio rerio 3cm 10\nNobody's fish 4cm 6\nCherry barb 3\n").List.Lines.Count);

    [Fact]
    public void A_full_name_gets_no_guess_of_another_order()
    {
        var list = ReadList.Of("Scientific name;Common name;Qty\nAstronotus ocellatus;Tiger oscar;5\n").List;
        Assert.DoesNotContain("puntigrus-tetrazona", list.Lines[0].Perhaps.Select(c => c.Species.Key));
    }
}
