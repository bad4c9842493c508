using CareSheets.Names.Matching;

namespace CareSheets.Tests.Names;

/// <summary>Spellings that are one word to the Code: ICZN Art. 58 and 34.2, with its examples where marked.</summary>
public sealed class SpellingKeyTests
{
    [Theory]
    [InlineData("helleri", "hellerii")] // Art. 58.12
    [InlineData("leerii", "leeri")]
    [InlineData("denisoni", "denisonii")]
    [InlineData("guentheri", "güntheri")] // Art. 32.5.2.1
    [InlineData("guentheri", "guntheri")]
    [InlineData("macracanthus", "macracantha")] // Art. 34.2
    [InlineData("aeneus", "aenea")]
    [InlineData("rhodostomus", "rhodostoma")]
    [InlineData("paleatus", "paleatum")]
    [InlineData("scalaris", "scalare")]
    [InlineData("niger", "nigra")]
    [InlineData("pulcher", "pulchrum")]
    [InlineData("oxyrhynchus", "oxyrynchus")] // example of Art. 58.4, from memory
    [InlineData("auctumnalis", "autumnalis")] // example of Art. 58.6, from memory
    [InlineData("litoralis", "littoralis")] // example of Art. 58.5, from memory
    [InlineData("caeruleus", "coeruleus")] // example of Art. 58.1, from memory
    [InlineData("cheirus", "chirus")] // example of Art. 58.2, from memory
    [InlineData("brigittae", "brigitae")]
    public void One_word_has_one_key(string one, string other) =>
        Assert.Equal(SpellingKey.Of(one), SpellingKey.Of(other));

    [Theory]
    [InlineData("panda", "pandi")]
    [InlineData("amandae", "amanda")]
    [InlineData("nigripinnis", "nigricauda")]
    [InlineData("espei", "hengeli")]
    [InlineData("scalare", "altum")]
    [InlineData("trilineatus", "bilineatus")]
    [InlineData("sp", "spp")]
    public void Other_words_have_another(string one, string other) =>
        Assert.NotEqual(SpellingKey.Of(one), SpellingKey.Of(other));
}
