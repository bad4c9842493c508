using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>A list of 1,000 lines against 10,000 names, measured against the bare distances.</summary>
public sealed class MatchingSpeedTests
{
    private const int Names = 10_000;
    private const int Lines = 1_000;

    /// <summary>One line in so many is compared with all, which takes long enough.</summary>
    private const int Share = 50;

    private const double Most = 0.2;

    /// <summary>
    /// Comparing every line with every name letter by letter is what a plain search would do; matching has to
    /// take a fifth of that at most, so that the test does not depend on the machine.
    /// </summary>
    [Fact]
    public void Matching_costs_a_fifth_of_comparing_all_with_all_at_most()
    {
        var (species, texts) = (MadeUpNames.Species(Names), MadeUpNames.Lines(Names, Lines));
        var matcher = new NameMatcher(new NameIndex(species), GenusTable.Known);
        matcher.Match(WrittenName.Of(texts[0]));
        var (found, sum) = (0, 0L);
        var ratio = SpeedRatio.Of(
            () => found = texts.Select(t => matcher.Match(WrittenName.Of(t)))
                .Count(m => m.Taken is not null || m.Others.Count > 0),
            () => sum += texts.Take(Lines / Share)
                .Sum(text => species.Sum(one => (long)BlockDistance.Between(text, one.Valid.ToString(), 2))),
            Most * Share) / Share;
        Assert.True(sum > 0);
        Assert.InRange(found, Lines * 9 / 10, Lines);
        Assert.True(ratio < Most, $"{Lines} lines took {ratio:F3} of comparing all");
    }
}
