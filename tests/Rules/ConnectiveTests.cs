using CareSheets.Rules;

namespace CareSheets.Tests.Rules;

/// <summary>The truth tables of Kleene 1938 (J. Symbolic Logic 3:150-155), and De Morgan's laws upon them.</summary>
public sealed class ConnectiveTests
{
    private static readonly Truth[] All = Enum.GetValues<Truth>();

    [Theory]
    [InlineData(Truth.Yes, Truth.Open, Truth.Open, Truth.Yes)]
    [InlineData(Truth.No, Truth.Open, Truth.No, Truth.Open)]
    [InlineData(Truth.Open, Truth.Open, Truth.Open, Truth.Open)]
    [InlineData(Truth.Yes, Truth.No, Truth.No, Truth.Yes)]
    [InlineData(Truth.Yes, Truth.Yes, Truth.Yes, Truth.Yes)]
    [InlineData(Truth.No, Truth.No, Truth.No, Truth.No)]
    public void An_open_part_decides_nothing_that_the_other_does_not(Truth a, Truth b, Truth both, Truth either)
    {
        Assert.Equal(both, Connective.All([a, b]));
        Assert.Equal(both, Connective.All([b, a]));
        Assert.Equal(either, Connective.Any([a, b]));
        Assert.Equal(either, Connective.Any([b, a]));
    }

    [Fact]
    public void De_Morgan_holds_for_every_pair()
    {
        foreach (var (a, b) in All.SelectMany(a => All.Select(b => (a, b))))
        {
            Assert.Equal(
                Connective.Not(Connective.All([a, b])), Connective.Any([Connective.Not(a), Connective.Not(b)]));
            Assert.Equal(a, Connective.Not(Connective.Not(a)));
        }
    }

    [Fact]
    public void Nothing_asked_is_all_there_and_none_of_it()
    {
        Assert.Equal(Truth.Yes, Connective.All([]));
        Assert.Equal(Truth.No, Connective.Any([]));
    }
}
