using CareSheets.PackingLists;

namespace CareSheets.Tests.PackingLists;

/// <summary>Columns of packs, of what is in each, and of totals, in the orders and words that suppliers have.</summary>
public sealed class CountColumnsTests
{
    [Theory]
    [InlineData("Bags;Qty/bag;Total pcs", "4;100;400", 400, null)]
    [InlineData("Bags;Qty/bag;Total pcs", "2;100;250", 250, "2 bags of 100 are 200, not 250")]
    [InlineData("Packs;per pack;Total", "4;100;400", 400, null)]
    [InlineData("Packs;per pack", "4;100", 400, null)]
    [InlineData("Packs;Per bag", "4;100", 400, null)]
    [InlineData("Total", "400", 400, null)]
    [InlineData("Total fish", "400", 400, null)]
    [InlineData("Qty;Total", "50;60", 60, "how many: 50, or 60 in all")]
    [InlineData("Bags;Qty;Total", "4;100;400", 400, null)]
    [InlineData("Packs;Price", "4;0,40", null, "how many: 4 bags")]
    [InlineData("Per pack;Price", "25;0,40", null, "how many: 25 in each bag")]
    [InlineData("Qty;Price;Total", "10;2;20", 10, null)] // a total of money
    [InlineData("Qty;Price;Total", "10;2,50;25,00", 10, null)]
    [InlineData("Count", "3 x 100", 300, null)]
    [InlineData("Count", "1 000", 1000, null)]
    public void The_total_is_read_else_packs_times_what_is_in_each(
        string headings, string cells, int? count, string? question)
    {
        var line = ReadList.Of($"Name;{headings}\nDanio rerio;{cells}\n").List.Lines[0].Line;
        Assert.Equal((count, question), (line.Count, line.Unclear.SingleOrDefault()));
    }

    [Theory]
    [InlineData("Name;Price;Ctn\nDanio rerio;0,40;50\nBetta splendens;3;4\n", "“Ctn”")]
    [InlineData("Name;Qty;Pieces\nDanio rerio;50;60\nBetta splendens;4;5\n", "“Pieces”")]
    [InlineData("1;Danio rerio;50\n2;Betta splendens;4\n", "3")]
    public void A_column_of_numbers_that_nobody_read_is_named(string text, string column)
    {
        var (_, found) = ReadList.Of(text);
        var told = Assert.Single(found);
        Assert.Equal(("AR961", $"The column {column} holds numbers and was not read"), (told.Code.Id, told.Message));
    }

    [Fact]
    public void Where_such_a_column_may_count_the_fish_each_line_is_asked() => Assert.All(
        ReadList.Of("Name;Ctn\nDanio rerio;50\nBetta splendens;4\n").List.Lines,
        l => Assert.Equal("how many", Assert.Single(l.Line.Unclear)));

    [Theory]
    [InlineData("Item;Description;Qty\nA1;Danio rerio;50\nA2;Betta splendens;4\n")]
    [InlineData("Item;Product;Qty\nDanio rerio;A1;50\nBetta splendens;A2;4\n")]
    [InlineData("Item;Common name;Qty\nA1;Danio rerio;50\nA2;Betta splendens;4\n")]
    public void Of_two_columns_the_one_that_holds_names_is_read(string text) => Assert.Equal(
        ["danio-rerio", "betta-splendens"], ReadList.Of(text).List.Lines.Select(l => l.Entry));

    [Theory]
    [InlineData("Unit price EUR", "0,38", "0,38 EUR")]
    [InlineData("Preis €", "0,38", "0,38 €")]
    [InlineData("Price", "0,38", "0,38")]
    [InlineData("Price EUR", "£0.38", "£0.38")]
    public void A_price_keeps_the_currency_of_its_heading(string heading, string cell, string price) => Assert.Equal(
        price, ReadList.Of($"Name;Qty;{heading}\nDanio rerio;50;{cell}\n").List.Lines[0].Line.Price);

    [Fact]
    public void A_line_with_a_code_or_a_size_alone_is_not_lost()
    {
        var list = ReadList.Of(
            "Code;Description;Size;Qty\nT1;Danio rerio;3 cm;5\n;;4 cm;6\nL046;;4 cm;2\n;;;13\n").List;
        Assert.Equal([5, 6, 2], list.Lines.Select(l => l.Line.Count!.Value));
        Assert.Equal(SkipReason.NoName, Assert.Single(list.Skipped).Reason);
    }
}
