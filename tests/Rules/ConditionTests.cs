using CareSheets.Rules;

namespace CareSheets.Tests.Rules;

/// <summary>Sentences of rules, and what they say of parts of entries.</summary>
public sealed class ConditionTests
{
    [Theory]
    [InlineData("tank.lid is tight", "tank: { lid: tight }", Truth.Yes)]
    [InlineData("tank.lid is not tight", "tank: { lid: tight }", Truth.No)]
    [InlineData("tank.lid is tight or yes", "tank: { lid: yes }", Truth.Yes)]
    [InlineData("tank.lid is tight", "diet: [omnivore]", Truth.Open)]
    [InlineData("tank.lid is not tight", "diet: [omnivore]", Truth.Open)]
    [InlineData("company.own kind is fierce or territorial", "company: { own kind: fierce }", Truth.Yes)]
    [InlineData("tank.needs has wood or caves", "tank: { needs: [caves, shade] }", Truth.Yes)]
    [InlineData("tank.needs lacks wood", "tank: { needs: [caves] }", Truth.Yes)]
    [InlineData("tank.needs has wood", "tank: { lid: yes }", Truth.No)]
    [InlineData("company.group is at least 6", "company: { group: 6 }", Truth.Yes)]
    [InlineData("company.group is below 6", "company: { group: 6 }", Truth.No)]
    [InlineData("company.group is below 6", "tank: { lid: yes }", Truth.Open)]
    [InlineData("tank.lid is stated", "tank: { lid: yes }", Truth.Yes)]
    [InlineData("tank.lid is not stated", "diet: [omnivore]", Truth.Yes)]
    public void Words_lists_and_counts_are_judged(string sentence, string entry, Truth expected) =>
        Assert.Equal(expected, RuleDesk.Judge(sentence, entry));

    [Theory]
    [InlineData("lowest care.ph is at least 7", "care: { ph: 7.0–8.0 }", Truth.Yes)]
    [InlineData("lowest care.ph is above 7", "care: { ph: 7.0–8.0 }", Truth.No)]
    [InlineData("highest care.temperature is at most 24.4 °C", "care: { temperature: 68–76 °F }", Truth.No)]
    [InlineData("highest care.temperature is at most 76 °F", "care: { temperature: 68–76 °F }", Truth.Yes)]
    [InlineData("width of care.temperature is at least 3 K", "care: { temperature: 24–27 °C }", Truth.Yes)]
    [InlineData("width of care.temperature is at least 3 K", "care: { temperature: 77–82 °F }", Truth.No)]
    [InlineData("lowest care.hardness is at most 8 °dH", "care: { hardness: < 5 °dH }", Truth.Yes)]
    [InlineData("highest care.hardness is at least 8 °dH", "care: { hardness: > 5 °dH }", Truth.Yes)]
    [InlineData("width of care.hardness is at least 8 °dH", "care: { hardness: > 5 °dH }", Truth.Open)]
    [InlineData("highest care.hardness is at least 142.7 mg/L CaCO3", "care: { hardness: 1–8 °dH }", Truth.Yes)]
    [InlineData("lowest care.ph.best is at least 7", "care: { ph: { keep: 6.5–8.0, prefers: 7.0–7.5 } }", Truth.Yes)]
    [InlineData("lowest care.ph.best is at least 7", "care: { ph: { keep: 6.5–8.0 } }", Truth.No)]
    [InlineData("lowest care.ph is at least 7", "care: { ph: { wild: 7.0–7.5 } }", Truth.Open)]
    [InlineData("lowest care.ph.wild is at least 7", "care: { ph: { wild: 7.0–7.5 } }", Truth.Yes)]
    [InlineData("lowest care.ph.keep is at least 7", "care: { ph: 7.0–7.5 }", Truth.Yes)]
    [InlineData("highest adult.length is above 30 cm", "adult: { length: 12 in TL }", Truth.Yes)]
    public void Figures_are_judged_in_whatever_unit_they_stand(string sentence, string entry, Truth expected) =>
        Assert.Equal(expected, RuleDesk.Judge(sentence, entry));

    [Theory]
    [InlineData("adult: { length: 20 cm SL }\ntank: { length: 60 cm }", Truth.Yes)]
    [InlineData("adult: { length: 20 cm SL }\ntank: { length: 59 cm }", Truth.No)]
    [InlineData("tank: { length: 59 cm }", Truth.Open)]
    public void A_figure_stands_beside_times_another(string entry, Truth expected) => Assert.Equal(
        expected, RuleDesk.Judge("lowest tank.length is at least 3 times highest adult.length", entry));

    [Theory]
    [InlineData("taxon is Poeciliidae", "family: Poeciliidae", Truth.Yes)]
    [InlineData("taxon is Poecilia", "scientificName: Poecilia wingei", Truth.Yes)]
    [InlineData("taxon is Poecilia wingei", "scientificName: Poecilia wingei", Truth.Yes)]
    [InlineData("taxon is wingei", "scientificName: Poecilia wingei", Truth.No)]
    [InlineData("taxon is not Poeciliidae", "family: Goodeidae", Truth.Yes)]
    [InlineData("taxon is Poeciliidae", "diet: [omnivore]", Truth.Open)]
    public void Taxa_of_any_rank_are_found(string sentence, string entry, Truth expected) =>
        Assert.Equal(expected, RuleDesk.Judge(sentence, entry));

    [Theory]
    [InlineData("Never RELEASE it.", Truth.Yes)]
    [InlineData("Open water is no place for it.", Truth.Yes)]
    [InlineData("It was released long ago.", Truth.No)]
    [InlineData("Prereleases are told.", Truth.No)]
    public void Texts_are_searched_for_whole_words(string caution, Truth expected) => Assert.Equal(
        expected, RuleDesk.Judge("cautions mentions release or open water", $"cautions: [{caution}]"));

    [Fact]
    public void Groups_of_conditions_hold_together()
    {
        const string sentence =
            "{ any of: [tank.lid is tight, { all of: [diet has omnivore, diet lacks piscivore] }] }";
        Assert.Equal(Truth.Yes, RuleDesk.Judge(sentence, "diet: [omnivore]"));
        Assert.Equal(Truth.No, RuleDesk.Judge(sentence, "diet: [piscivore]\ntank: { lid: yes }"));
        Assert.Equal(Truth.Open, RuleDesk.Judge(sentence, "diet: [piscivore]"));
        Assert.Equal(Truth.Yes, RuleDesk.Judge("{ none of: [tank.lid is tight] }", "tank: { lid: yes }"));
    }

    [Theory]
    [InlineData("tank.lid", "PR806")]
    [InlineData("tank.lid is shut", "SC203")]
    [InlineData("lid is tight", "PR807")]
    [InlineData("highest tank.lid is above 3 cm", "PR807")]
    [InlineData("lowest care.ph is at least", "QT301")]
    [InlineData("lowest care.temperature is at least 70", "QT303")]
    [InlineData("lowest care.temperature is at least < 70 °C", "QT316")]
    [InlineData("company.group is at least -3", "PR806")]
    [InlineData("lowest tank.length is above 3 times highest adult.lenght", "PR807")]
    public void What_cannot_be_read_is_told(string sentence, string code)
    {
        var found = Assert.Single(RuleDesk.Mistakes(sentence));
        Assert.Equal(code, found.Code.Id);
        Assert.False(found.Span.IsNone);
    }
}
