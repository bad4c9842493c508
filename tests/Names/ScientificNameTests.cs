using CareSheets.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>Names in the binominal form of the ICZN Code (4th ed. 1999, Art. 5), and their addresses.</summary>
public sealed class ScientificNameTests
{
    [Theory]
    [InlineData("Danio rerio", "Danio", "rerio", null, "danio-rerio")]
    [InlineData("Rasbora heteromorpha espei", "Rasbora", "heteromorpha", "espei", "rasbora-heteromorpha-espei")]
    [InlineData("Polygonia c-album", "Polygonia", "c-album", null, "polygonia-c-album")] // ICZN Art. 32.5.2.4.3
    public void A_name_has_a_genus_an_epithet_and_perhaps_a_subspecies(
        string text, string genus, string epithet, string? subspecies, string slug)
    {
        var name = ScientificName.Parse(text);
        Assert.NotNull(name);
        Assert.Equal((genus, epithet, subspecies), (name.Genus, name.Epithet, name.Subspecies));
        Assert.Equal(text, name.ToString());
        Assert.Equal(slug, name.Slug);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Danio")]
    [InlineData("danio rerio")]
    [InlineData("Danio Rerio")]
    [InlineData("DANIO rerio")]
    [InlineData("Danio  rerio")]
    [InlineData(" Danio rerio")]
    [InlineData("Danio rerio (Hamilton, 1822)")]
    [InlineData("Danio cf. rerio")]
    [InlineData("Danio sp.")]
    [InlineData("Danio -rerio")]
    [InlineData("Danio rerio a b")]
    [InlineData("Danio rerió")]
    [InlineData("Danio\trerio")]
    public void Other_texts_are_no_names(string text) => Assert.Null(ScientificName.Parse(text));

    [Fact]
    public void Equal_names_are_equal() =>
        Assert.Equal(ScientificName.Parse("Danio rerio"), ScientificName.Parse("Danio rerio"));

    [Theory]
    [InlineData("Danio rerio", "danio-rerio")]
    [InlineData("Inlé Lake", "inle-lake")]
    [InlineData("Guaporé basin", "guapore-basin")]
    [InlineData("  a -- b!  ", "a-b")]
    [InlineData("L046", "l046")]
    [InlineData("鱼", "")]
    public void An_address_has_small_letters_digits_and_single_hyphens(string name, string slug) =>
        Assert.Equal(slug, Slug.From(name));

    [Fact]
    public void An_address_of_an_address_is_the_same() =>
        Assert.All(RealSite.Entries, name => Assert.Equal(name, Slug.From(name)));

    /// <summary>The program runs without ICU, where taking marks off letters is another matter than here.</summary>
    [Theory]
    [InlineData("Guaporé basin", "origins/water-guapore-basin.html")]
    [InlineData("Pánuco basin", "origins/water-panuco-basin.html")]
    [InlineData("Paraná basin", "origins/water-parana-basin.html")]
    public void The_program_itself_takes_marks_off_letters(string water, string address)
    {
        Assert.True(RealSite.Pages.ContainsKey(address), $"{water} is not at {address}");
        Assert.Equal(water, RealSite.Pages[address].QuerySelector("h1")!.TextContent);
    }
}
