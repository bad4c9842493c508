using CareSheets.Relatives;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>Collections in which there is little or nothing to ask: a clear sentence, and no NaN anywhere.</summary>
public sealed class SmallCollectionTests
{
    private const string TooFew = "too few to estimate from";

    [Fact]
    public void One_species_has_nobody_to_ask()
    {
        using var grown = new GrownContent([("Solus unicus", "Solidae", "Solales", "22–26 °C", "")]);
        var run = grown.Run();
        var page = run.Page("species/solus-unicus.html");
        Assert.Contains("Only 0 other species have a figure of their own", page,
            StringComparison.Ordinal);
        Assert.Contains("Too few species state any one figure", run.Page("how-well.html"), StringComparison.Ordinal);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void One_genus_is_enough_where_there_are_species_enough()
    {
        using var grown = new GrownContent([.. Enumerable.Range(0, 8).Select(i => (
            $"Unigenus {GrownContent.Epithet(i)}", "Unidae", "Unales", $"{20 + i % 4}–{25 + i % 4} °C",
            i == 0 ? "" : $"{6 + i % 3 / 10.0:0.0}–{7 + i % 3 / 10.0:0.0}"))]);
        var page = grown.Run().Page($"species/unigenus-{GrownContent.Epithet(0)}.html");
        Assert.Contains("range-row--estimated", page, StringComparison.Ordinal);
        Assert.Contains("of the same genus. 80 % sure that the middle lies in", page, StringComparison.Ordinal);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void Equal_values_say_nothing_of_how_far_another_may_stray()
    {
        using var grown = new GrownContent([.. Enumerable.Range(0, 8).Select(i => (
            $"Par {GrownContent.Epithet(i)}", "Paridae", "Parales", "22–26 °C", i == 0 ? "" : "6.0–7.0"))]);
        var page = grown.Run().Page($"species/par-{GrownContent.Epithet(0)}.html");
        Assert.Contains("All 7 other species have the same figure", page, StringComparison.Ordinal);
        Assert.DoesNotContain("range-row--estimated", page, StringComparison.Ordinal);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void A_range_missing_everywhere_stays_unknown()
    {
        using var grown = new GrownContent([.. Enumerable.Range(0, 8).Select(i => (
            $"Absens {GrownContent.Epithet(i)}", "Absidae", "Absales", $"{20 + i}–{25 + i} °C", ""))]);
        var page = grown.Run().Page($"species/absens-{GrownContent.Epithet(3)}.html");
        Assert.Contains(TooFew, page, StringComparison.Ordinal);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void One_child_at_each_rank_leaves_the_whole_collection_to_ask()
    {
        using var grown = new GrownContent([.. Enumerable.Range(0, 8).Select(i => (
            $"{GrownContent.Capital(i)}us {GrownContent.Epithet(i)}", $"{GrownContent.Capital(i)}idae",
            $"{GrownContent.Capital(i)}iformes", $"{20 + i % 3}–{25 + i % 3} °C",
            i == 0 ? "" : $"{6 + i % 3 / 10.0:0.0}–{7 + i % 3 / 10.0:0.0}"))]);
        var name = $"{GrownContent.Capital(0)}us-{GrownContent.Epithet(0)}".ToLowerInvariant();
        var page = grown.Run().Page($"species/{name}.html");
        Assert.Contains("from all 7 species with a figure of their own", page, StringComparison.Ordinal);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void Estimates_at_the_plausible_limit_do_not_pass_it()
    {
        using var grown = new GrownContent([.. Enumerable.Range(0, 8).Select(i => (
            $"Calidus {GrownContent.Epithet(i)}", "Calidae", "Calales",
            i == 0 ? "" : $"{40 - i % 2}–42 °C", "6.0–7.0"))]);
        grown.Run();
        var estimate = EstimateMaker.Make(grown.Engine(), grown.Entry(0), "temperature")!;
        Assert.Equal(EstimateVerdict.Estimated, estimate.Verdict);
        Assert.InRange(estimate.Range!.High, 39, 42);
        Assert.InRange(estimate.Range.Sure.High, 39, 42);
        grown.AssertNoNonsense();
    }

    [Fact]
    public void Relatives_too_far_apart_disagree_and_the_shop_may_bear_more()
    {
        (string, string, string, string, string)[] far = [.. Enumerable.Range(0, 8).Select(i => (
            $"Discors {GrownContent.Epithet(i)}", "Discidae", "Discales",
            i == 0 ? "" : $"{8 + 3 * i}–{10 + 3 * i} °C", "6.0–7.0"))];
        using var grown = new GrownContent(far);
        var address = $"species/discors-{GrownContent.Epithet(0)}.html";
        Assert.Contains("relatives disagree", grown.Run().Page(address), StringComparison.Ordinal);
        using var bearing = new GrownContent(far, "relativesDisagree: { temperature: 20 K }");
        Assert.DoesNotContain("relatives disagree", bearing.Run().Page(address), StringComparison.Ordinal);
    }
}
