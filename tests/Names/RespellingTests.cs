using CareSheets.Names;
using CareSheets.Names.Speech;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>Where the stress falls, and how names are spelt for readers of English.</summary>
public sealed class RespellingTests
{
    // The rule's own examples: Allen and Greenough, New Latin Grammar, 1903, section 12 (cited from memory).
    [Theory]
    [InlineData("roma", 0)]
    [InlineData("contingit", 1)]
    [InlineData("alacris", 0)] // a stop with r closes nothing
    [InlineData("dissociabilis", 3)]
    public void Stress_falls_where_the_grammar_puts_it(string word, int stressed) =>
        Assert.Equal(stressed, LatinWord.Of(word).Stressed);

    // Latin and Greek names that are English words too, with the stress of any English dictionary (from memory).
    [Theory]
    [InlineData("hippopotamus", 2)]
    [InlineData("rhinoceros", 1)]
    [InlineData("chrysanthemum", 1)]
    [InlineData("asparagus", 1)]
    [InlineData("delphinium", 1)]
    [InlineData("geranium", 1)]
    [InlineData("hydrangea", 1)]
    [InlineData("hibiscus", 1)]
    [InlineData("narcissus", 1)]
    [InlineData("eucalyptus", 2)]
    [InlineData("platypus", 0)]
    [InlineData("octopus", 0)]
    [InlineData("rhododendron", 2)]
    [InlineData("tyrannosaurus", 3)]
    [InlineData("brachiosaurus", 3)]
    [InlineData("diplodocus", 1)]
    [InlineData("cyclamen", 0)]
    public void Stress_falls_where_dictionaries_of_English_put_it(string word, int stressed) =>
        Assert.Equal(stressed, LatinWord.Of(word).Stressed);

    // As aquarists who follow the English tradition say them (from memory).
    [Theory]
    [InlineData("Paracheirodon innesi", "pa-ra-KY-ro-don IN-nes-eye")]
    [InlineData("Danio rerio", "DAY-nee-oh REE-ree-oh")]
    [InlineData("Trichopodus trichopterus", "tri-KOP-o-dus tri-KOP-te-rus")]
    [InlineData("Xiphophorus hellerii", "zi-FOF-o-rus HEL-ler-ee-eye")]
    [InlineData("Pterophyllum scalare", "te-ro-FIL-lum ska-LAY-ree")]
    [InlineData("Hyphessobrycon eques", "hi-fes-so-BRY-kon EE-kweez")]
    [InlineData("Apistogramma cacatuoides", "a-pis-to-GRAM-muh ka-ka-too-OY-deez")]
    [InlineData("Hoplisoma sterbai", "ho-pli-SOH-muh STER-buh-eye")]
    [InlineData("Osteogaster aenea", "os-tee-o-GAS-ter EE-nee-uh")]
    [InlineData("Sahyadria denisonii", "sa-hee-AY-dree-uh DEN-i-son-ee-eye")]
    [InlineData("Pseudomugil gertrudae", "soo-do-MOO-jil JER-troo-dee")]
    [InlineData("Gastromyzon scitulus", "gas-tro-MY-zon SIT-oo-lus")]
    [InlineData("Boraras brigittae", "bo-RAY-ras bri-JIT-tee")]
    public void Names_are_said_as_keepers_say_them(string name, string said) =>
        Assert.Equal(said, Respelling.Of(ScientificName.Parse(name)!).Text);

    [Theory]
    [InlineData("Danio rerio", false)]
    [InlineData("Apistogramma cacatuoides", false)]
    [InlineData("Hoplisoma sterbai", true)] // of persons nobody can see how they are called: Sterba
    [InlineData("Mikrogeophagus ramirezi", true)] // Ramírez
    [InlineData("Poecilia wingei", true)] // Winge, with the g of singer
    [InlineData("Fundulopanchax gardneri", true)] // Gardner
    [InlineData("Petitella georgiae", true)] // Georgia
    [InlineData("Botia almorhae", true)] // a place, of which the same is true
    [InlineData("Danio harringtonorum", true)] // several persons; made up
    [InlineData("Danio merianarum", true)] // several women; made up
    [InlineData("Otocinclus cocama", true)] // the length of the second a is in no table
    public void What_spelling_does_not_tell_is_called_a_guess(string name, bool isGuess) =>
        Assert.Equal(isGuess, Respelling.Of(ScientificName.Parse(name)!).IsGuess);

    [Fact]
    public void Every_word_of_every_entry_has_one_stress_and_nothing_unspoken()
    {
        Assert.All(RealContent.Collection.Entries.SelectMany(e => e.FormerNames.Append(e.ScientificName)), name =>
        {
            var said = Respelling.Of(name.Value).Text.Split(' ');
            Assert.Equal(name.Value.ToString().Split(' ').Length, said.Length);
            Assert.All(said, word => Assert.Single(word.Split('-'), s => s.Any(char.IsUpper)));
            Assert.All(said, word => Assert.DoesNotMatch("--|^-|-$|[^A-Za-z-]", word));
        });
    }

    [Fact]
    public void What_a_person_approved_is_no_guess() =>
        Assert.False(Respelling.Approved("pa-ra-KY-ro-don AX-el-rod-eye").IsGuess);
}
