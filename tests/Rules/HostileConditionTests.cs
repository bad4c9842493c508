using CareSheets.Diagnostics;
using CareSheets.Reading;
using CareSheets.Reading.Conditions;
using CsCheck;

namespace CareSheets.Tests.Rules;

/// <summary>Whatever a person types as a condition is read or told, and never throws.</summary>
public sealed class HostileConditionTests
{
    private static readonly Gen<string> Words = Gen.OneOf(
        "lowest", "highest", "width of", "care.ph", "care.temperature.best", "tank.lid", "tank.needs",
        "company.own kind",
        "is", "is not", "has", "lacks", "mentions", "is below", "is at least", "3 times", "7 °C", "< 5", "or", "tight",
        "taxon", "", "is stated", "prose", "tap.ph", "\u0000", "{", "999999999999999999999999");

    [Fact]
    public void Any_row_of_words_is_read_or_told() =>
        Words.Array[0, 7].Sample(words => AssertHeard(string.Join(' ', words)));

    [Fact]
    public void Any_text_is_read_or_told() => Gen.String.Sample(AssertHeard);

    /// <summary>Either there is a condition, or the bag says why not; and what there is can be judged.</summary>
    private static void AssertHeard(string text)
    {
        var bag = new DiagnosticBag();
        var place = new SourceFile("rules.yaml", text).Span(1, 1, Math.Max(1, text.Length));
        var read = new ConditionReader(RuleDesk.Schema.Catalogue, bag).All(new YamlScalar(text, true, place));
        Assert.True(read.Parts.Count == 1 || bag.HasErrors, text);
        Assert.True(Enum.IsDefined(read.Judge(RuleDesk.Entry("care: { ph: 6–7 }\ntank: { lid: yes }"))));
    }
}
