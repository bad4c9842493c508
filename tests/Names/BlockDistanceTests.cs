using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.Tests.Names;

/// <summary>The distance of Rees 2014, held against the values of its reference port.</summary>
public sealed class BlockDistanceTests
{
    // Test file of the reference port (GlobalNamesArchitecture, damerau-levenshtein, commit of 2016).
    [Theory]
    [InlineData("Pomatomus", "Pomatomux", 1, 1)]
    [InlineData("Potamomus", "Pomatomus", 1, 2)]
    [InlineData("Pomatomus", "oPmatomus", 0, 2)]
    [InlineData("Pomatomus", "oPmatomus", 1, 1)]
    [InlineData("Pomatomus", "Pomatomsu", 1, 1)]
    [InlineData("serrulatus", "serratulus", 2, 2)]
    [InlineData("Pomatomus", "Poomumats", 3, 3)]
    [InlineData("vesiculosus", "vecusilosus", 1, 4)]
    [InlineData("vesiculosus", "vecusilosus", 2, 2)]
    [InlineData("trimerophyton", "mertriophyton", 1, 6)]
    [InlineData("trimerophyton", "mertriophyton", 3, 3)]
    [InlineData("Pxxxxomus", "Pomatomus", 1, 4)]
    [InlineData("L", "Linneaus", 1, 7)]
    [InlineData("Cedarinia scabra Sjöstedt 1921", "Cedarinia scabra Söjstedt 1921", 1, 1)]
    [InlineData("", "Pomatomus", 1, 9)]
    [InlineData("Sjöstedt", "Sjostedt", 1, 1)]
    [InlineData("CA", "ABC", 1, 3)] // restricted: 2 without that
    public void Distances_are_those_of_the_reference(string one, string other, int block, int distance) =>
        Assert.Equal(distance, BlockDistance.Between(one, other, block));

    [Fact]
    public void Blocks_of_one_letter_give_the_plain_distance_and_longer_blocks_never_more()
    {
        var random = new Random(20261125);
        string Word() => string.Concat(Enumerable.Range(0, random.Next(9)).Select(_ => (char)('a' + random.Next(3))));
        for (var i = 0; i < 2000; i++)
        {
            var (one, other) = (Word(), Word());
            var plain = BlockDistance.Between(one, other, 1);
            Assert.Equal(EditDistance.Between(one, other), plain);
            Assert.InRange(BlockDistance.Between(one, other, 2), 0, plain);
            Assert.Equal(BlockDistance.Between(one, other, 2), BlockDistance.Between(other, one, 2));
        }
    }

    [Fact]
    public void The_cheap_bound_never_hides_a_near_word()
    {
        var random = new Random(4);
        string Word() => string.Concat(
            Enumerable.Range(0, 1 + random.Next(8)).Select(_ => (char)('a' + random.Next(5))));
        for (var i = 0; i < 5000; i++)
        {
            var (one, other) = (Word(), Word());
            var distance = BlockDistance.Between(one, other, 2);
            Assert.True(IndexedName.CanBeWithin(
                distance, one, IndexedName.LettersOf(one), other, IndexedName.LettersOf(other)), $"{one} {other}");
        }
    }
}
