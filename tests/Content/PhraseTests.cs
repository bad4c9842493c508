using CareSheets.Tests.Support;

namespace CareSheets.Tests.Content;

/// <summary>
/// Each species is written about in words of its own, and at a length that is read standing at the
/// tank. The limits are the house's habit, not a finding.
/// </summary>
public sealed class PhraseTests
{
    private const int TooLong = 10;
    private const int FewestWords = 120;
    private const int MostWords = 250;

    private static readonly IReadOnlyList<ProseWords> Texts = ProseWords.Of(RealContent.Collection);

    [Fact]
    public void No_ten_words_in_a_row_stand_twice_in_the_collection() =>
        Assert.Equal([], SharedPhrase.Find(Texts, TooLong));

    [Fact]
    public void Each_prose_has_120_to_250_words() =>
        Assert.Equal([], Texts.Where(t => t.Words.Count is < FewestWords or > MostWords)
            .Select(t => $"{t.Name}: {t.Words.Count}"));

    [Fact]
    public void Ten_words_of_one_entry_planted_in_another_are_found_and_nine_are_not()
    {
        var (source, host) = (Texts[0], Texts[^1]);
        Assert.Empty(WithPlanted(source, host, TooLong - 1));
        var found = Assert.Single(WithPlanted(source, host, TooLong));
        Assert.Equal((source.Name, host.Name), (found.First, found.Second));
        Assert.Equal(string.Join(' ', source.Words.Take(TooLong)), found.Words);
    }

    [Theory]
    [InlineData("<p>Water, <em>cool</em> and clear</p>")]
    [InlineData("<p>water <strong>cool</strong></p>\n<p>and – clear!</p>")]
    [InlineData("<p>WATER &ldquo;cool&rdquo;\nand clear</p>")]
    public void Marks_capitals_and_line_ends_do_not_hide_a_phrase(string markup) =>
        Assert.Equal(["water", "cool", "and", "clear"], ProseWords.FromMarkup("x", markup).Words);

    [Fact]
    public void A_word_keeps_its_hyphen_and_its_apostrophe() =>
        Assert.Equal(
            ["sterba's", "cave-spawner", "doesn't", "l046"],
            ProseWords.FromMarkup("x", "<p>Sterba’s cave-spawner – doesn't L046</p>").Words);

    private static IReadOnlyList<SharedPhrase> WithPlanted(ProseWords source, ProseWords host, int count) =>
        SharedPhrase.Find([source, host.WithBeginning(source.Words.Take(count))], TooLong);
}
