using CareSheets.Proofing;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>Entries that were reviewed on a day to come.</summary>
public sealed class ReadAheadTests
{
    /// <summary>The toy's entries were read on 30 September, 2 and 3 October 2026.</summary>
    [Theory]
    [InlineData(2026, 10, 2, "danio-margaritatus", true)]
    [InlineData(2026, 10, 2, "danio-rerio", false)]
    [InlineData(2026, 10, 3, "danio-margaritatus", false)]
    public void A_day_after_today_is_told(int year, int month, int day, string entry, bool isTold) =>
        Assert.Equal(isTold, IsTold(new DateOnly(year, month, day), entry));

    /// <summary>A clock that is behind two of three entries is wrong itself.</summary>
    [Fact]
    public void A_clock_behind_most_entries_is_not_believed()
    {
        Assert.False(IsTold(new DateOnly(2026, 10, 1), "danio-margaritatus"));
        Assert.False(IsTold(new DateOnly(1970, 1, 1), "danio-margaritatus"));
    }

    [Fact]
    public void The_last_day_of_all_stops_nothing()
    {
        var toy = ToySite.Read(change: w => w.Replace("content/species/danio-rerio.md", "2026-10-02", "9999-12-31"));
        Assert.Empty(new RuleProof(toy.Collection, new DateOnly(2026, 11, 1)).Describe(toy.Entry("danio-rerio")));
    }

    private static bool IsTold(DateOnly today, string entry)
    {
        var toy = ToySite.Read();
        return new RuleProof(toy.Collection, today).Describe(toy.Entry(entry))
            .Any(d => d.Values["rule"] == "reviewed-is-not-to-come");
    }
}
