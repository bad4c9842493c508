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
