using CareSheets.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>Endings of adjectives follow the genus: ICZN Art. 31.2, 34.2.</summary>
public sealed class GenderEndingTests
{
    [Theory]
    [InlineData("Hoplisoma", "paleatus", "paleatum")] // Dias et al. 2024: Hoplisoma is neuter
    [InlineData("Hoplisoma", "acrensis", "acrense")]
    [InlineData("Osteogaster", "aeneus", "aenea")]
    [InlineData("Pterophyllum", "scalaris", "scalare")]
    [InlineData("Aphyosemion", "australis", "australe")]
    [InlineData("Trichopsis", "pumilus", "pumila")]
    [InlineData("Poecilia", "reticulatus", "reticulata")]
    [InlineData("Neolamprologus", "multifasciatus", "multifasciatus")]
    [InlineData("Glossolepis", "incisus", "incisa")]
    public void An_adjective_takes_the_gender_of_the_genus(string genus, string epithet, string expected) =>
        Assert.Equal(expected, GenderEnding.For(genus, epithet, GenusTable.Known));

    [Theory]
    [InlineData("Chromobotia", "macracanthus")] // a noun, or may be one
    [InlineData("Puntigrus", "tetrazona")]
    [InlineData("Paracheirodon", "innesi")]
    [InlineData("Brochis", "multiradiatus")] // gender not settled in the table
    [InlineData("Nosuchgenus", "maculatus")]
    public void Where_a_table_is_silent_nothing_is_said(string genus, string epithet) =>
        Assert.Null(GenderEnding.For(genus, epithet, GenusTable.Known));

    [Fact]
    public void Every_entry_agrees_with_its_genus_and_the_table_decides_many()
    {
        var entries = RealContent.Collection.Entries;
        var decided = entries.Where(e =>
            GenderEnding.For(e.Genus, e.ScientificName.Value.Epithet, GenusTable.Known) is not null).ToList();
        Assert.InRange(decided.Count, 20, entries.Count);
        Assert.All(decided, e => Assert.Equal(
            e.ScientificName.Value.Epithet,
            GenderEnding.For(e.Genus, e.ScientificName.Value.Epithet, GenusTable.Known)));
    }

    [Fact]
    public void The_table_of_genera_agrees_with_the_entries_about_families_and_orders()
    {
        Assert.InRange(GenusTable.Known.All.Count(), 150, 1000);
        Assert.All(RealContent.Collection.Entries, entry => Assert.Equal(
            (entry.Genus, entry.Family.Value, entry.Order.Value),
            GenusTable.Known.Find(entry.Genus) is { } known ? (known.Name, known.Family, known.Order) : default));
    }
}
