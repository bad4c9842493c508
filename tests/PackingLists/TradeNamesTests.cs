using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>
/// What the trade writes behind a genus is seldom an epithet. Nobody knows that a name without an entry is valid,
/// so no such line is taken, and only what can be an epithet is offered for a draft.
/// </summary>
public sealed class TradeNamesTests
{
    private static readonly NameMatcher Matcher = CollectionNames.Matcher(RealContent.Collection);

    private static readonly NewNames News = new(RealContent.Collection);

    [Theory]
    [InlineData("L144 Ancistrus gold", "gold")]
    [InlineData("Apistogramma double red", "double red")]
    [InlineData("Synodontis mix", "mix")]
    [InlineData("Danio assorted", "assorted")]
    [InlineData("Betta koi", "koi")]
    [InlineData("Polypterus ornate", "")]
    [InlineData("Poecilia molly", "")]
    [InlineData("Pterophyllum marble", "marble")]
    [InlineData("Neolamprologus daffodil", "daffodil")]
    [InlineData("BETTA KOI", "koi")]
    [InlineData("Apistogramma (double red)", "double red")]
    [InlineData("Rineloricaria Red", "Red")]
    public void A_genus_with_words_of_the_trade_is_asked_and_no_name_is_made_of_it(string said, string strain)
    {
        var line = Read(said);
        Assert.Equal((null, null), (line.Entry, line.NewName));
        Assert.Equal(strain, line.Line.Strain);
    }

    [Theory]
    [InlineData("Panaque sp. L 90 pap", "L090", "")]
    [InlineData("Panaque sp. L-90", "L090", "")]
    [InlineData("Danio rerio L 10 cm", null, "10 cm")] // a size mark before a size is no code
    public void A_code_with_a_space_in_it_is_still_one(string said, string? code, string size)
    {
        var line = Read(said).Line;
        Assert.Equal((code, size), (line.Reading.TradeCodes.SingleOrDefault(), line.Size));
    }

    [Fact]
    public void A_code_without_an_entry_is_told_as_the_clue_that_it_is() => Assert.Equal(
        "a genus, and no species; no entry has the code L144", MatchText.Why(Read("L144 Ancistrus gold")));

    [Theory]
    [InlineData("Apistogramma panduro", null)]
    [InlineData("Danio kyathit 4cm", null)]
    [InlineData("Apistogramma panduro \"Nanay\"", null)]
    [InlineData("Channa gachua", "no relatives")]
    [InlineData("Corydoras trilineatus", "moved")] // the genus has been left by all that have entries
    [InlineData("Apistogramma macmastari", "misspelt")]
    [InlineData("Apistogramma cf. panduro", "doubtful")]
    public void A_new_name_is_offered_for_a_draft_and_never_taken(string said, string? whyNot)
    {
        var line = Read(said);
        Assert.Null(line.Entry);
        Assert.Equal(whyNot is null, line.NewName is not null);
        Assert.Equal(whyNot is null, MatchText.Why(line).Contains("arrival \"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Xiphophorus helleri (red line) 4cm", "xiphophorus-hellerii", "red line", "")]
    [InlineData("Danio rerio (WC)", "danio-rerio", "", "")]
    [InlineData("Danio rerio (see note)", "danio-rerio", "", "see note")]
    [InlineData("Danio rerio (Hamilton, 1822) gold", "danio-rerio", "gold", "")]
    [InlineData("Pterophyllum scalare veil, mixed colours", "pterophyllum-scalare", "veil mixed colours", "")]
    public void Brackets_are_read_as_one(string said, string entry, string strain, string remark)
    {
        var line = Read(said);
        Assert.Equal((entry, strain, remark), (line.Entry, line.Line.Strain, line.Line.Remark));
    }

    /// <summary>A trade name of which a part is another species' epithet: Corydoras "super schwartzi".</summary>
    [Fact]
    public void A_colour_before_an_epithet_is_left_where_it_is() =>
        Assert.Equal("Corydoras super panda", Read("Corydoras super panda").Line.NameText);

    [Theory]
    [InlineData("Danio rerio EB", "EB: a mark, an author or a place")]
    [InlineData("Pterophyllum altum WC Orinoco", "Orinoco: a mark, an author or a place")]
    [InlineData("Poecilia wingei Black Bar", "Bar: a mark, an author or a place, or a part of the strain Black")]
    public void No_place_is_written_while_it_is_open(string said, string unclear)
    {
        var line = Read(said).Line;
        Assert.Equal(("", unclear), (line.Place, Assert.Single(line.Unclear)));
    }

    [Fact]
    public void No_word_that_is_never_an_epithet_is_one_here()
    {
        var epithets = RealContent.Collection.Entries.SelectMany(e => e.FormerNames.Select(n => n.Value)
            .Append(e.ScientificName.Value)).Select(n => n.Epithet).ToHashSet();
        Assert.True(epithets.Count > 80);
        Assert.DoesNotContain(epithets, e => ListWords.Find(e) is not null);
    }

    private static MatchedLine Read(string said)
    {
        var rows = new[] { new ListRow(1, ["Item", "Qty"], ""), new ListRow(2, [said, "10"], said) };
        var list = new PackingListReader(Matcher, new RememberedAnswers([]), new CareSheets.Diagnostics.DiagnosticBag())
            .Read(rows, "list.csv", "list.csv");
        var line = Assert.Single(list!.Lines);
        return line with { NewName = News.Of(line) };
    }
}
