using CareSheets.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Names;

/// <summary>Scientific names in everyday sentences, here between stars.</summary>
public sealed class LatinRunsTests
{
    [Theory]
    [InlineData("Its double, *Hoplisoma duplicareum*, is sold under the same name.")]
    [InlineData("The Indian *Carinotetraodon travancoricus* and *C. irrubesco* are puffers.")]
    [InlineData("Never keep it with other *Hypancistrus*, with which it may breed.")]
    [InlineData("Farm crosses between *Synodontis* species are sold.")]
    [InlineData("*Corydoras* are small; *Corydoras panda* is one.")]
    [InlineData("*Corydoras*")]
    [InlineData("A label reading *Tetraodon fluviatilis* may mean this puffer.")]
    public void Names_are_found_with_their_epithets(string marked)
    {
        var runs = LatinRuns.Of(marked.Replace("*", "", StringComparison.Ordinal));
        Assert.Equal(marked, string.Concat(runs.Select(r => r.IsLatin ? $"*{r.Text}*" : r.Text)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Adults need room. Ask the shop first.")]
    [InlineData("Lake Malawi and the Rio Negro are far away.")]
    [InlineData("It needs C. 200 litres; T. hengeli without its genus stays plain.")]
    [InlineData("Cichlidae and Siluriformes are upright.")]
    public void Everything_else_stays_plain(string text) =>
        Assert.Equal([new TextRun(text, false)], LatinRuns.Of(text));

    [Fact]
    public void Every_name_of_the_collection_is_found_whole() =>
        Assert.All(RealContent.Collection.Entries, entry =>
        {
            var name = entry.ScientificName.Value.ToString();
            Assert.Contains(new TextRun(name, true), LatinRuns.Of($"Beside {name} others pale."));
        });

    [Fact]
    public void The_runs_of_every_caution_make_up_the_caution() =>
        Assert.All(
            RealContent.Collection.Entries.SelectMany(e => e.Cautions).Select(c => c.Value),
            text => Assert.Equal(text, string.Concat(LatinRuns.Of(text).Select(r => r.Text))));
}
