using CareSheets.Paper;
using CareSheets.Paper.Layout;

namespace CareSheets.Tests.Paper;

/// <summary>What a card says of what it can't show, and how it sets apart what must be seen first.</summary>
public sealed class CardPlanTests
{
    private static readonly string[] Cautions =
    [
        "Its flesh is poisonous.", "It bites through fingers, so use tongs and see a doctor about a deep bite.",
        "It needs brackish water, 7–17 g/L of salt, for all of its life.", "Change salt slowly.",
    ];

    [Theory]
    [InlineData("A6")]
    [InlineData("A7")]
    [InlineData("50x40 mm")]
    public void A_card_tells_how_many_cautions_found_no_room(string size)
    {
        var plan = CardPlanner.Plan(PaperSizeText.Read(size)!.Value, Content());
        var left = plan.Dropped.Count(name => name.StartsWith("caution", StringComparison.Ordinal));
        Assert.Equal(left > 0 ? $"{left} left" : "", string.Concat(
            Texts(plan).Where(t => t.Text.EndsWith("left", StringComparison.Ordinal)).Select(t => t.Text)));
    }

    [Fact]
    public void The_small_card_of_these_leaves_cautions_out_and_the_large_one_none()
    {
        Assert.DoesNotContain(CardPlanner.Plan(PaperSize.A6, Content()).Dropped, IsCaution);
        Assert.Contains(CardPlanner.Plan(PaperSizeText.Read("50x40 mm")!.Value, Content()).Dropped, IsCaution);
    }

    [Fact]
    public void The_mark_changes_with_the_number_of_cautions_left_out()
    {
        var size = PaperSizeText.Read("50x40 mm")!.Value;
        var content = Content();
        var more = content with { Parts = [.. content.Parts, new CautionPart("caution 5", "Keep it warm.")] };
        var (one, other) = (CardPlanner.Plan(size, content), CardPlanner.Plan(size, more));
        Assert.Equal(one.Dropped.Count + 1, other.Dropped.Count);
        Assert.NotEqual(one.Mark, other.Mark);
    }

    [Fact]
    public void Only_the_gravest_caution_stands_behind_a_bar_and_in_bold()
    {
        var plan = CardPlanner.Plan(PaperSize.A6, Content());
        var bar = Assert.Single(plan.Inks.OfType<InkBox>(), box => box.Height > box.Width);
        Assert.InRange(bar.Width, 0.8, 3); // mm: what a copier can't lose
        var first = Texts(plan).Single(t => t.Text == Cautions[0]);
        Assert.Equal(Face.Bold, first.Face);
        Assert.InRange(first.Y, bar.Y, bar.Y + bar.Height);
        Assert.Equal(Face.Plain, Texts(plan).Single(t => t.Text == Cautions[3]).Face);
    }

    [Fact]
    public void What_finds_no_room_takes_along_what_stands_behind_it_in_its_place_and_nothing_else()
    {
        var long1 = string.Join(' ', Enumerable.Repeat("word", 300));
        var content = Content() with
        {
            Parts =
            [
                new FactPart(CardPlace.Facts, "Group", "one only", "fierce to its own kind"),
                new FactPart(CardPlace.Facts, "Food", long1, ""),
                new FactPart(CardPlace.Facts, "To others", "peaceful", ""),
                new CautionPart("caution 1", "Bites.", true),
                new CautionPart("caution 2", long1), new CautionPart("caution 3", "Leaps."),
            ],
        };
        var plan = CardPlanner.Plan(PaperSizeText.Read("90x55 mm")!.Value, content);
        Assert.Equal(["Food", "To others", "caution 2", "caution 3"], plan.Dropped);
        Assert.Contains(Texts(plan), t => t.Text == "Bites.");
    }

    [Fact]
    public void A_fact_loses_its_spare_note_before_it_drops()
    {
        var note = string.Join(' ', Enumerable.Repeat("inch", 200));
        var fact = new FactPart(CardPlace.Facts, "Tank", "80 cm long", note);
        var size = PaperSizeText.Read("90x55 mm")!.Value;
        Assert.Equal(["Tank"], CardPlanner.Plan(size, Content() with { Parts = [fact] }).Dropped);
        var spare = CardPlanner.Plan(size, Content() with { Parts = [fact with { HasSpareNote = true }] });
        Assert.Empty(spare.Dropped);
        Assert.Contains(Texts(spare), t => t.Text == "80 cm long");
    }

    /// <summary>Widths are those of the two faces; a space between two runs belongs to neither drawing.</summary>
    [Fact]
    public void Runs_of_a_caution_stand_side_by_side_each_in_its_face()
    {
        var part = new CautionPart("caution 1",
        [
            new TypeRun("It crosses with ", Face.Plain), new TypeRun("Betta imbellis", Face.Latin),
            new TypeRun(", so keep them apart.", Face.Plain),
        ]);
        var type = CardType.For(PaperSize.A6)[^1];
        var size = Points.ToMillimetres(type.Body);
        var lines = part.Lay(200, type).Inks.OfType<InkText>().ToList();
        Assert.Equal(["It crosses with", "Betta imbellis", ", so keep them apart."], lines.Select(l => l.Text));
        Assert.Equal([Face.Plain, Face.Latin, Face.Plain], lines.Select(l => l.Face));
        Assert.Equal(lines[0].X + FaceWidths.Of("It crosses with ", Face.Plain, size), lines[1].X, 1e-9);
        Assert.Equal(lines[1].X + FaceWidths.Of("Betta imbellis", Face.Latin, size), lines[2].X, 1e-9);
        Assert.Single(lines.Select(l => l.Y).Distinct());
        Assert.Equal(2, part.Lay(60, type).Inks.OfType<InkText>().Select(l => l.Y).Distinct().Count());
    }

    private static bool IsCaution(string name) => name.StartsWith("caution", StringComparison.Ordinal);

    private static IEnumerable<InkText> Texts(CardPlan plan) => plan.Inks.OfType<InkText>();

    private static CardContent Content() => new(
        new HeadPart("Green spotted puffer", "Dichotomyctere nigroviridis"),
        [
            new WaterPart("Temperature", "24–28 °C", "76–82 °F", ""), new WaterPart("pH", "7.5–8.5", "", ""),
            .. Cautions.Select((text, i) => new CautionPart($"caution {i + 1}", text, i == 0)),
        ],
        new CardFoot("Copperbeck Fishroom", "17 October 2026", count => $"{count} left"));
}
