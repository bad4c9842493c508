using CareSheets.Names.Matching;

namespace CareSheets.Tests.Names;

/// <summary>Near matches as Rees published them: PLoS ONE 9(9): e107510, posts of 2008 and 2010, his port.</summary>
public sealed class NearRuleTests
{
    // Keys: tests of the reference port (GlobalNamesArchitecture, taxamatch_rb, commit 1feabf9, 2016).
    [Theory]
    [InlineData("bifasciata", false, "BIFASATA")]
    [InlineData("bifasciatum", true, "BIFASATA")]
    [InlineData("Betula", false, "BITILA")]
    [InlineData("Aerenea", false, "ERINIA")]
    [InlineData("scrobiculatum", true, "SCRABICILATA")]
    public void Keys_are_those_of_the_reference(string word, bool isEpithet, string key) =>
        Assert.Equal(key, isEpithet ? PhoneticKey.OfEpithet(word) : PhoneticKey.OfGenus(word));

    [Theory]
    [InlineData("Nicholsia", "Nichollsia")] // Rees 2010
    [InlineData("Coelorynchys", "Coelorhynchus")]
    [InlineData("Penaeus", "Peneus")]
    [InlineData("Pteranodon", "Teranodon")]
    [InlineData("Euglena", "Uglena")]
    [InlineData("Caelorinchus", "Coelorinchus")] // Rees 2008
    [InlineData("Coelorinchus", "Coelorynchus")]
    [InlineData("Corydoras", "Coridoras")] // of our own making
    [InlineData("Hyphessobrycon", "Hyphesobrycon")]
    [InlineData("Paracheirodon", "Parachierodon")]
    [InlineData("Pterophyllum", "Pterophylum")]
    [InlineData("Xiphophorus", "Ziphophorus")]
    [InlineData("Carassius", "Carasius")]
    public void Genera_that_sound_alike_match(string one, string other)
    {
        Assert.Equal(PhoneticKey.OfGenus(one), PhoneticKey.OfGenus(other));
        Assert.True(NearRule.Genera(SoundedWord.Genus(one), SoundedWord.Genus(other)));
    }

    [Theory]
    [InlineData("Pomatomus", "Pomatomas", true)]
    [InlineData("Patella", "Abbella", false)]
    [InlineData("Plantago", "Plantagon", true)]
    [InlineData("Xantheri", "Pantheri", true)]
    [InlineData("Xant", "Xanthe", false)]
    [InlineData("Panulirus", "Palinurus", true)] // a candidate only: both are real genera (Rees 2008)
    [InlineData("Danio", "Dario", true)] // so a near match is offered, never applied
    [InlineData("Botia", "Betta", true)]
    public void Genera_match_by_letters_as_the_rule_says(string one, string other, bool match) =>
        Assert.Equal(match, NearRule.Genera(SoundedWord.Genus(one), SoundedWord.Genus(other)));

    [Theory]
    [InlineData("radiata", "radiatus", true)] // Rees 2010: gender
    [InlineData("concolor", "cancolor", true)]
    [InlineData("sapien", "sapiens", true)]
    [InlineData("saltatrix", "saltratix", true)]
    [InlineData("major", "rajor", true)]
    [InlineData("majorum", "majoris", true)]
    [InlineData("marrr", "maaaa", false)]
    [InlineData("majjjjorrrrr", "majjjjoraaaa", true)]
    [InlineData("majorrrrr", "marorraaa", false)]
    [InlineData("pealeii", "plei", false)]
    [InlineData("innesi", "inesi", true)] // of our own making
    [InlineData("axelrodi", "axelrodii", true)]
    [InlineData("scalare", "scalaris", true)]
    public void Epithets_match_as_the_rule_says(string one, string other, bool match) =>
        Assert.Equal(match, NearRule.Epithets(SoundedWord.Epithet(one), SoundedWord.Epithet(other)));

    [Fact]
    public void Near_is_near_both_ways()
    {
        var random = new Random(11);
        string Word() => string.Concat(
            Enumerable.Range(0, 4 + random.Next(5)).Select(_ => "aeiohrst"[random.Next(8)]));
        for (var i = 0; i < 2000; i++)
        {
            var (one, other) = (SoundedWord.Epithet(Word()), SoundedWord.Epithet(Word()));
            Assert.Equal(NearRule.Epithets(one, other), NearRule.Epithets(other, one));
        }
    }
}
