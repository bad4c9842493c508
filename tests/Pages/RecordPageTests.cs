using CareSheets.Pages;
using CareSheets.Relatives;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>The engine's own record as its page shows it.</summary>
public sealed class RecordPageTests
{
    private static readonly IReadOnlyList<RecordLine> Lines =
        OwnRecord.Keep(RelativesEngine.Ask(RealContent.Collection));

    [Fact]
    public void Every_share_stands_with_its_count_and_a_star_where_chance_does_not_explain_it()
    {
        var cells = RealSite.Pages["how-well.html"].QuerySelectorAll(".record__cell")
            .Select(c => c.TextContent.Replace('\u00a0', ' ').Replace("\u2060", "", StringComparison.Ordinal)).ToList();
        Assert.Equal(3 * Lines.Count, cells.Count(c => c.Contains('%', StringComparison.Ordinal)));
        foreach (var counted in Lines.SelectMany(l => l.Coverage.Select(c => (l.Count, Counted: c))))
        {
            var share = Math.Round(100.0 * counted.Counted.Covered / counted.Count, MidpointRounding.AwayFromZero);
            Assert.Contains($"{share} %{(counted.Counted.Agrees ? "" : " *")}", cells);
            Assert.Contains($"{counted.Counted.Covered} ({counted.Counted.Low}–{counted.Counted.High})", cells);
        }
        Assert.Equal(Lines.Sum(l => l.Coverage.Count(c => !c.Agrees)),
            cells.Count(c => c.EndsWith('*')));
    }

    [Fact]
    public void Each_kind_of_table_is_explained_once() =>
        Assert.Equal(3, RealSite.Pages["how-well.html"].QuerySelectorAll(".fact-list__fact").Length);
}
