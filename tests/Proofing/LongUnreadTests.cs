using CareSheets.Diagnostics;
using CareSheets.Proofing;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>When an entry is due to be read through again.</summary>
public sealed class LongUnreadTests
{
    /// <summary>The toy's zebra danio was read on 2 October 2026.</summary>
    [Theory]
    [InlineData(2028, 10, 2, false)]
    [InlineData(2028, 10, 3, true)]
    [InlineData(2026, 10, 2, false)]
    public void Two_years_after_its_last_reading_it_is_remarked(int year, int month, int day, bool isTold)
    {
        var toy = ToySite.Read();
        var proof = new RuleProof(toy.Collection, new DateOnly(year, month, day));
        var found = proof.Describe(toy.Entry("danio-rerio")).ToList();
        Assert.Equal(isTold, found.Exists(d => d.Values["rule"] == "entry-is-read-again-in-time"));
        Assert.All(found, d => Assert.Equal(Severity.Note, d.Severity));
    }

    [Fact]
    public void Where_no_day_is_given_nobody_asks()
    {
        var toy = ToySite.Read();
        Assert.Empty(new RuleProof(toy.Collection).Describe(toy.Entry("danio-rerio")));
    }
}
