using CareSheets.Names;

namespace CareSheets.Tests.Names;

/// <summary>Codes of armoured catfishes as people type them (common practice, no source).</summary>
public sealed class TradeCodeTests
{
    [Theory]
    [InlineData("L46", "L046")]
    [InlineData(" l 046 ", "L046")]
    [InlineData("LDA-22", "LDA022")]
    [InlineData("L no. 134", "L134")]
    [InlineData("CW 51", "CW051")]
    [InlineData("L46 zebra", null)]
    [InlineData("L46 L98", null)]
    [InlineData("L4", null)]
    [InlineData("", null)]
    public void A_text_that_is_one_code_is_read_in_its_usual_form(string text, string? code) =>
        Assert.Equal(code, TradeCode.Read(text));

    [Theory]
    [InlineData("L046", "L046 L46")]
    [InlineData("L134", "L134")]
    [InlineData("LDA022", "LDA022 LDA22")]
    [InlineData("L333a", "L333a")]
    public void It_is_spelt_with_and_without_the_zeros(string code, string spellings) =>
        Assert.Equal(spellings.Split(' '), TradeCode.Spellings(code));
}
