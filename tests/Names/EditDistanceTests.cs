using CareSheets.Names;

namespace CareSheets.Tests.Names;

/// <summary>Distances of published examples, and laws that hold for any two words.</summary>
public sealed class EditDistanceTests
{
    // Worked examples of the literature where no letters are swapped, so that the restricted
    // distance equals the plain one: kitten/sitting 3 and Saturday/Sunday 3 are the standard
    // examples of textbooks (from memory); intention/execution is 5 with unit costs (Jurafsky and
    // Martin, Speech and Language Processing, section on minimum edit distance; from memory).
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("Saturday", "Sunday", 3)]
    [InlineData("intention", "execution", 5)]
    [InlineData("", "", 0)]
    [InlineData("", "danio", 5)]
    [InlineData("danio", "", 5)]
    [InlineData("danio", "danio", 0)]
    public void Known_words_are_as_far_apart_as_published(string one, string other, int distance) =>
        Assert.Equal(distance, EditDistance.Between(one, other));

    // Damerau 1964 (Commun. ACM 7:171-176) counts four single errors: a wrong, a missing and an
    // extra letter, and a swap of neighbours.
    [Theory]
    [InlineData("danio", "denio")]
    [InlineData("danio", "dano")]
    [InlineData("danio", "daniio")]
    [InlineData("danio", "dnaio")]
    public void Each_single_error_of_Damerau_counts_one(string one, string other) =>
        Assert.Equal(1, EditDistance.Between(one, other));

    /// <summary>CA to ABC: 3 in the restricted form, in which nothing is edited twice; 2 without that.</summary>
    [Fact]
    public void Swapped_letters_are_not_edited_again() => Assert.Equal(3, EditDistance.Between("CA", "ABC"));

    [Fact]
    public void Distance_is_the_same_both_ways_and_never_more_than_the_longer_word()
    {
        var random = new Random(20261125);
        string Word() => string.Concat(Enumerable.Range(0, random.Next(8)).Select(_ => (char)('a' + random.Next(3))));
        for (var i = 0; i < 2000; i++)
        {
            var (one, other) = (Word(), Word());
            var distance = EditDistance.Between(one, other);
            Assert.Equal(distance, EditDistance.Between(other, one));
            Assert.Equal(one == other, distance == 0);
            Assert.InRange(distance, Math.Abs(one.Length - other.Length), Math.Max(one.Length, other.Length));
        }
    }

    [Theory]
    [InlineData("danio-reiro", "danio-rerio")]
    [InlineData("Danio-Rerio", "danio-rerio")]
    [InlineData("beta-splendens", "betta-splendens")]
    [InlineData("zebra", null)]
    [InlineData("", null)]
    public void The_nearest_candidate_is_offered_and_a_far_one_is_not(string word, string? nearest) =>
        Assert.Equal(nearest, EditDistance.Nearest(word, ["danio-rerio", "betta-splendens", "danio-margaritatus"]));

    [Fact]
    public void Of_two_equally_near_the_first_in_order_is_offered_whatever_came_first() =>
        Assert.Equal("danio-a", EditDistance.Nearest("danio-x", ["danio-b", "danio-a"]));

    [Fact]
    public void Very_long_words_are_not_compared() =>
        Assert.Null(EditDistance.Nearest(new string('a', 5000), [new string('a', 5000)]));
}
