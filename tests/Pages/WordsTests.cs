using CareSheets.Diagnostics;
using CareSheets.Pages;

namespace CareSheets.Tests.Pages;

/// <summary>Words of a theme: a missing one is told by its key, a sentence must hold its blanks.</summary>
public sealed class WordsTests
{
    [Fact]
    public void A_missing_word_is_shown_by_its_key_and_told_once()
    {
        var words = With();
        Assert.Equal("menu.home", words["menu.home"]);
        Assert.Equal("menu.home", words["menu.home"]);
        var told = Assert.Single(words.Missing);
        Assert.Equal(TemplateCodes.NoWord, told.Code);
        Assert.Contains("menu.home", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sentence_is_filled() =>
        Assert.Equal(
            "Ash of Wrenholt",
            With(("s.x", "{name} of {place}")).Say("s.x", ("place", "Wrenholt"), ("name", "Ash")));

    [Fact]
    public void A_blank_may_stand_twice() =>
        Assert.Equal("a a", With(("s.x", "{n} {n}")).Say("s.x", ("n", "a")));

    [Fact]
    public void A_value_that_looks_like_a_blank_stays_as_it_is() =>
        Assert.Equal("{b} 2", With(("s.x", "{a} {b}")).Say("s.x", ("a", "{b}"), ("b", "2")));

    [Fact]
    public void A_sentence_without_its_blank_is_told()
    {
        var words = With(("s.x", "of {place}"));
        Assert.Equal("of Wrenholt", words.Say("s.x", ("place", "Wrenholt"), ("name", "Ash")));
        var told = Assert.Single(words.Missing);
        Assert.Equal(TemplateCodes.MissingBlank, told.Code);
        Assert.Equal("The words for s.x leave out {name}", told.Message);
    }

    [Fact]
    public void A_missing_sentence_is_told_as_missing_and_not_for_its_blanks()
    {
        var words = With();
        words.Say("s.x", ("name", "Ash"));
        Assert.Equal(TemplateCodes.NoWord, Assert.Single(words.Missing).Code);
    }

    [Theory]
    [InlineData(0, "0 fishes")]
    [InlineData(1, "one fish")]
    [InlineData(2, "2 fishes")]
    [InlineData(1234, "1234 fishes")]
    public void One_and_many_have_their_own_forms(int count, string said) =>
        Assert.Equal(said, With(("fish_one", "one fish"), ("fish_many", "{count} fishes")).Count("fish", count));

    [Fact]
    public void A_text_that_may_be_missing_is_not_told()
    {
        var words = With();
        Assert.Equal("Bolivia", words.Or("country.BO", "Bolivia"));
        Assert.Empty(words.Missing);
    }

    [Fact]
    public void A_group_gives_its_own_words_only() =>
        Assert.Equal(
            [("home", "Home")], With(("page.home", "Home"), ("pages.x", "X"), ("menu.page", "Y")).Group("page"));

    [Fact]
    public void A_word_that_the_program_cannot_find_stops_the_site()
    {
        using var workshop = new Support.Workshop();
        workshop.Replace("theme/sentences.yaml", "  home: Home\n", "");
        var run = workshop.RunSite();
        Assert.Null(run.Outcome);
        Assert.Equal("TP604", Assert.Single(run.Found).Code.Id);
        Assert.False(Directory.Exists(workshop.Site));
    }

    private static Words With(params (string Key, string Text)[] texts) =>
        new(texts.ToDictionary(t => t.Key, t => t.Text), "words.yaml");
}
