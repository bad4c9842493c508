using System.Text.RegularExpressions;
using CareSheets.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>Parentheses around author and year: ICZN Code, 4th ed. 1999, Art. 51.3.</summary>
public sealed partial class AuthorshipTests
{
    // The original combinations are those that the entries of the content state.
    [Theory]
    [InlineData("Hamilton, 1822", "Danio rerio", "Cyprinus rerio", "(Hamilton, 1822)")]
    [InlineData("(Hamilton, 1822)", "Danio rerio", "Cyprinus rerio", "(Hamilton, 1822)")]
    [InlineData("(Regan, 1910)", "Betta splendens", "Betta splendens", "Regan, 1910")]
    [InlineData("Regan, 1910", "Betta splendens", "Betta splendens", "Regan, 1910")]
    public void Parentheses_say_that_the_genus_has_changed(
        string written, string now, string original, string expected)
    {
        var (name, first) = (ScientificName.Parse(now)!, ScientificName.Parse(original)!);
        Assert.Equal(expected, new Authorship(written).For(name, first).Text);
    }

    [Fact]
    public void A_changed_epithet_alone_asks_for_none() => // Art. 51.3.1: the genus decides, not the ending
        Assert.Equal("Roberts, 2007", new Authorship("Roberts, 2007")
            .For(ScientificName.Parse("Danio margaritatus")!, ScientificName.Parse("Danio margaritata")!).Text);

    [Theory]
    [InlineData("(Hamilton, 1822)", true)]
    [InlineData("Hamilton, 1822", false)]
    [InlineData("(Hamilton), 1822", false)]
    public void Only_parentheses_around_all_of_it_count(string text, bool inParentheses) =>
        Assert.Equal(inParentheses, new Authorship(text).InParentheses);

    [Fact]
    public void Every_entry_of_the_content_is_written_as_its_two_genera_ask()
    {
        var entries = Repository.Files("content/species", "*.md").ToList();
        Assert.True(entries.Count >= 20, $"Only {entries.Count} entries were found.");
        foreach (var text in entries.Select(File.ReadAllText))
        {
            var written = new Authorship(Field(text, "scientificNameAuthorship"));
            var now = ScientificName.Parse(Field(text, "scientificName"));
            var original = ScientificName.Parse(Field(text, "originalNameUsage"));
            Assert.Equal(written, written.For(now!, original!));
            Assert.Equal(now!.Genus != original!.Genus, written.InParentheses);
        }
    }

    private static string Field(string entry, string name) =>
        FieldPattern().Matches(entry).Single(m => m.Groups[1].Value == name).Groups[2].Value.Trim('"', '\'');

    [GeneratedRegex("^([A-Za-z]+): +(.+)$", RegexOptions.Multiline)]
    private static partial Regex FieldPattern();
}
