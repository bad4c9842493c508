using CareSheets.Tests.Support;

namespace CareSheets.Tests.Content;

/// <summary>
/// What is told of the families of this collection. The limits are the house's habit, not a finding.
/// </summary>
public sealed class FamilyTextTests
{
    private static readonly IReadOnlyList<ProseWords> Texts =
    [
        .. RealContent.Collection.FamilyNotes.Values.Select(n => ProseWords.FromMarkup(n.Name.Value, n.Text)),
    ];

    [Fact]
    public void Every_family_of_the_collection_has_a_line_and_no_other_has() =>
        Assert.Equal(
            RealContent.Collection.Families.Select(f => f.Name),
            Texts.Select(t => t.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Each_text_has_40_to_90_words() =>
        Assert.Equal([], Texts.Where(t => t.Words.Count is < 40 or > 90).Select(t => $"{t.Name}: {t.Words.Count}"));

    [Fact]
    public void No_ten_words_in_a_row_stand_twice_in_families_and_entries() =>
        Assert.Equal([], SharedPhrase.Find([.. ProseWords.Of(RealContent.Collection), .. Texts], 10));

    [Fact]
    public void No_two_families_go_by_one_name()
    {
        var names = RealContent.Collection.FamilyNotes.Values.SelectMany(n => n.VernacularNames)
            .Select(n => n.Value.ToLowerInvariant()).ToList();
        Assert.Equal(names.Distinct(), names);
    }
}
