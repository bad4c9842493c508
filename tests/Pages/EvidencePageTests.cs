using System.Globalization;
using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>Staff see which figures rest on nothing of their own; customers see where each comes from.</summary>
public sealed class EvidencePageTests
{
    [Fact]
    public void Each_figure_stands_under_what_it_rests_on()
    {
        var page = ToySite.Read().At<EvidencePage>("papers/evidence.html");
        var rerio = page.Groups.SelectMany(g => g.Entries).Single(e => e.VernacularName == "zebra danio");
        Assert.Equal(
            "Grown length, Temperature, General hardness, Smallest tank, Company of its own kind", rerio.Without);
        Assert.StartsWith("pH (published: ", rerio.Own, StringComparison.Ordinal);
        Assert.Equal("", rerio.Unknown);
        Assert.Equal(
            ["from memory, still to be checked", "common practice, no source"], page.Groups.Select(g => g.Mark));
    }

    [Fact]
    public void What_nobody_stated_is_told_as_such()
    {
        var toy = ToySite.Read(change: w => w.Replace("content/species/danio-rerio.md", "  hardness: 3–20 °dH\n", ""));
        var page = toy.At<EvidencePage>("papers/evidence.html");
        var rerio = page.Groups.SelectMany(g => g.Entries).Single(e => e.VernacularName == "zebra danio");
        Assert.Equal("General hardness", rerio.Unknown);
        Assert.Equal("1", page.Marks[^1].Value);
    }

    [Fact]
    public void The_marks_count_every_figure_once()
    {
        var page = ToySite.Read().At<EvidencePage>("papers/evidence.html");
        // Three entries with size, tank and company, nine ranges, and one more for what a fighter prefers.
        Assert.Equal(3 * 3 + 9 + 1, page.Marks.Sum(m => int.Parse(m.Value, CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Sizes_may_have_evidence_of_their_own_and_customers_are_told()
    {
        var toy = ToySite.Read(change: w => w.Replace(
            "content/species/danio-rerio.md", "mouth: small }", "mouth: small, evidence: seen here }"));
        Assert.Contains(toy.Species("danio-rerio").Evidence, f => f == new Fact("Size and life span", "seen here"));
        var page = toy.At<EvidencePage>("papers/evidence.html");
        var rerio = page.Groups.SelectMany(g => g.Entries).Single(e => e.VernacularName == "zebra danio");
        Assert.StartsWith("Grown length (seen here)", rerio.Own, StringComparison.Ordinal);
    }
}
