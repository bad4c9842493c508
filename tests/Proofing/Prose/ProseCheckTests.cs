using CareSheets.Diagnostics;
using CareSheets.Proofing.Prose;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing.Prose;

/// <summary>Prose against figures as a whole: places, hostile texts, and the repository's own entries.</summary>
public sealed class ProseCheckTests
{
    [Fact]
    public void The_prose_of_every_entry_here_agrees_with_its_figures() =>
        Assert.Equal([], ProseCheck.Check(RealContent.Collection).Select(d => $"{d.Span.File}: {d.Message}"));

    [Fact]
    public void A_finding_stands_at_its_words_and_leads_to_the_figure()
    {
        var found = Assert.Single(Found("It swims.\n\nA  [shoal](word:shoal) likes water of **30 °C** and more."));
        Assert.Equal(ProseCodes.Disagrees, found.Code);
        var lines = File.ReadAllLines(Repository.At("tests", "Support", "Toy", "species", "danio-rerio.md"));
        var fence = Array.FindLastIndex(lines, l => l == "---");
        Assert.Equal(fence + 4, found.Span.Start.Line); // the fence counted from 1, then the third line below it
        Assert.Equal(1 + "A  [shoal](word:shoal) likes water of **".Length, found.Span.Start.Column);
        Assert.Equal("30 °C".Length, found.Span.End.Column - found.Span.Start.Column);
        var figure = Assert.Single(found.Related).Span;
        Assert.StartsWith("  temperature:", lines[figure.Start.Line - 1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("The celestial pearl danio grows to 30 cm.")]
    [InlineData("The [other one](danio-margaritatus.md) grows to 30 cm.")]
    [InlineData("Danio margaritatus is another matter. It grows to 30 cm.")]
    [InlineData("In 1822 it was described on page 30 of 400.")]
    [InlineData("20 °C is not enough in that case, and 40 °C is too much.")]
    [InlineData("Live food keeps for two months in the freezer.")]
    [InlineData("Never buy two or three.")]
    public void What_is_about_something_else_is_left_alone(string prose) => Assert.Empty(Found(prose));

    [Theory]
    [InlineData(10_000, "24 ")]
    [InlineData(10_000, "24 °C and pH 7 ")]
    [InlineData(10_000, "a group of twelve to ")]
    [InlineData(50_000, "](")]
    [InlineData(50_000, "[x](")]
    [InlineData(10_000, "it grows to 99 cm. ")]
    [InlineData(20_000, "1,000.5-")]
    [InlineData(60_000, "9")]
    [InlineData(30_000, "half a ")]
    public void Four_times_the_numbers_take_about_four_times_as_long(int times, string piece)
    {
        const double mostRatio = 10; // a scan that looked back over all of the text would need sixteen
        var few = string.Concat(Enumerable.Repeat(piece, times / 4));
        var many = string.Concat(Enumerable.Repeat(piece, times));
        Found(few);
        Assert.InRange(SpeedRatio.Of(() => Found(many), () => Found(few), mostRatio), 0, mostRatio);
    }

    private static List<Diagnostic> Found(string prose)
    {
        var toy = Toy.Value;
        var entry = toy.Entry("danio-rerio");
        return [.. ProseCheck.Check(
            entry with { Prose = entry.Prose with { Markdown = prose } }, new SpeciesNames(toy.Collection))];
    }

    private static readonly Lazy<ToySite> Toy = new(() => ToySite.Read());
}
