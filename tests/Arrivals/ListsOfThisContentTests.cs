using CareSheets.Tests.Support;

namespace CareSheets.Tests.Arrivals;

/// <summary>Each arrival here lies beside the supplier's list that it came from, word for word.</summary>
public sealed class ListsOfThisContentTests
{
    [Fact]
    public void Every_batch_says_what_its_line_of_the_list_says()
    {
        var arrivals = RealContent.Collection.Arrivals.Arrivals;
        Assert.True(arrivals.Count >= 3);
        foreach (var arrival in arrivals)
        {
            var lines = File.ReadAllLines(Repository.At("content", "arrivals", arrival.List!.Value));
            Assert.All(arrival.Batches, b => Assert.Equal(b.Said.Value, lines[b.Line!.Value - 1]));
        }
    }
}
