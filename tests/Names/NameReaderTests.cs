using CareSheets.Names;

namespace CareSheets.Tests.Names;

/// <summary>Written names taken apart; what the Code says of their form (ICZN, 4th ed. 1999).</summary>
public sealed class NameReaderTests
{
    [Theory]
    [InlineData("Paracheirodon innesi (Myers, 1936)", "Paracheirodon innesi", "(Myers, 1936)")]
    [InlineData("Danio rerio (Hamilton, 1822)", "Danio rerio", "(Hamilton, 1822)")]
    [InlineData("Betta splendens Regan, 1910", "Betta splendens", "Regan, 1910")]
    [InlineData("Apistogramma (Apistogramma) agassizii (Steindachner, 1875)", "Apistogramma agassizii",
        "(Steindachner, 1875)")]
    [InlineData("Polygonia c-album", "Polygonia c-album", "")]
    [InlineData("Baryancistrus xanthellus Rapp Py-Daniel, Zuanon & Ribeiro de Oliveira, 2011",
        "Baryancistrus xanthellus", "Rapp Py-Daniel, Zuanon & Ribeiro de Oliveira, 2011")]
    [InlineData("Dichotomyctere nigroviridis (Marion de Procé, 1822)", "Dichotomyctere nigroviridis",
        "(Marion de Procé, 1822)")]
    [InlineData("Paracheirodon innesi Myers", "Paracheirodon innesi", "Myers")]
    [InlineData("Rasbora heteromorpha espei", "Rasbora heteromorpha espei", "")]
    [InlineData("Corydoras panda Nijssen et al., 1971", "Corydoras panda", "Nijssen et al., 1971")]
    [InlineData("Hyphessobrycon bentosi van der Meer, 1908", "Hyphessobrycon bentosi", "van der Meer, 1908")]
    public void A_sound_name_has_its_parts_and_no_problem(string text, string name, string author)
    {
        var read = NameReader.Read(text);
        Assert.Equal((name, author, ""), (read.Name?.ToString(), read.Authorship, read.Rest));
        Assert.Empty(read.Problems);
        Assert.True(read.IsPlain);
    }

    [Theory]
    [InlineData("paracheirodon innesi", NameProblem.GenusWithoutCapital)] // Art. 4.1
    [InlineData("Paracheirodon Innesi", NameProblem.EpithetWithCapital)] // Art. 5.1
    [InlineData("Paracheirodon innesi Myers 1936", NameProblem.NoCommaBeforeYear)] // Rec. 22A
    [InlineData("Paracheirodon innesi (Myers, 1936", NameProblem.UnevenParentheses)]
    [InlineData("Paracheirodon innesi Myers, 1936)", NameProblem.UnevenParentheses)]
    [InlineData("Nothobranchius güntheri", NameProblem.NotLatinLetters)] // Art. 27
    [InlineData("Aus bus Smith, 1750", NameProblem.YearTooEarly)] // Art. 11.1
    [InlineData("P. innesi", NameProblem.ShortGenus)]
    [InlineData("Danio rerio 1822", NameProblem.YearWithoutAuthor)]
    [InlineData("Danio rerio, Hamilton, 1822", NameProblem.MarkBeforeAuthor)] // Art. 51.2
    [InlineData("Danio x", null)]
    public void What_offends_against_the_form_is_told(string text, NameProblem? problem) =>
        Assert.Equal(problem is { } p ? [p] : [], NameReader.Read(text).Problems);

    [Theory]
    [InlineData("Corydoras cf. aeneus", "Corydoras aeneus", "cf.", "", "")]
    [InlineData("Corydoras sp. \"C121\"", null, "sp.", "C121", "")]
    [InlineData("Corydoras sp. C121", null, "sp.", "", "C121")]
    [InlineData("Hypancistrus sp. aff. zebra", "Hypancistrus zebra", "sp. aff.", "", "")]
    [InlineData("Apistogramma sp. 'Abacaxis'", null, "sp.", "Abacaxis", "")]
    [InlineData("Betta spp", null, "spp.", "", "")]
    [InlineData("Hypancistrus zebra L46", "Hypancistrus zebra", "", "", "L046")]
    [InlineData("Panaqolus maccus LDA 22", "Panaqolus maccus", "", "", "LDA022")]
    [InlineData("Melanotaenia boesemani “Aytinjo”", "Melanotaenia boesemani", "", "Aytinjo", "")]
    [InlineData("Betta ?splendens", null, "", "", "")]
    [InlineData("Betta ? splendens", "Betta splendens", "?", "", "")]
    public void Open_nomenclature_is_read_beside_the_name( // Art. 5.3; Sigovini et al. 2016, Methods Ecol. Evol. 7
        string text, string? name, string signs, string tags, string codes)
    {
        var read = NameReader.Read(text);
        Assert.Equal(name, read.Name?.ToString());
        Assert.Equal(signs, string.Join(' ', read.Qualifiers));
        Assert.Equal(tags, string.Join(' ', read.Tags));
        Assert.Equal(codes, string.Join(' ', read.TradeCodes));
    }

    [Theory]
    [InlineData("Xiphophorus hellerii × maculatus")]
    [InlineData("Xiphophorus hellerii x maculatus")]
    [InlineData("× Amphichromis parrot")]
    [InlineData("Polypterus hybrid")]
    public void Hybrids_are_seen(string text) => Assert.True(NameReader.Read(text).IsHybrid);

    [Theory]
    [InlineData("Apistogramma (Apistogramma) cf. agassizii \"Alenquer\" Regan, 1908",
        "[Apistogramma] [(Apistogramma)] cf. [agassizii] ‘Alenquer’ Regan, 1908")]
    [InlineData("Hypancistrus sp. L333", "[Hypancistrus] sp. L333")]
    [InlineData("P. innesi", "[P.] [innesi]")]
    public void Only_names_are_printed_in_italics(string text, string printed) => Assert.Equal(printed,
        string.Join(' ', NamePart.Of(NameReader.Read(text)).Select(p => p.IsItalic ? $"[{p.Text}]" : p.Text)));

    [Fact]
    public void No_text_stops_the_reader_and_no_letter_of_it_is_lost()
    {
        var random = new Random(7);
        const string signs = "Aabx.() ,'\"“”×?&1758L46-é🐟\t";
        for (var i = 0; i < 20_000; i++)
        {
            var text = string.Concat(
                Enumerable.Range(0, random.Next(24)).Select(_ => signs[random.Next(signs.Length)]));
            Assert.NotNull(NameReader.Read(text).Rest);
        }
        Assert.Equal(new string('a', 10_000), NameReader.Read(new string('a', 10_000)).Rest);
    }
}
