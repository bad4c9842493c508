using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Telling;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Telling;

/// <summary>What sets a species apart, counted again by hand on the real collection.</summary>
public sealed class DistinctionTests
{
    private static readonly DistinctionFinder Finder = new(RealContent.Collection);

    private static IReadOnlyList<Entry> All => RealContent.Collection.Entries;

    [Fact]
    public void Whoever_is_said_to_outgrow_others_does_so()
    {
        var told = All.SelectMany(e => Finder.Find(e, [], 50).OfType<FigureDistinction>()
            .Where(d => d.Topic == "length").Select(d => (Entry: e, Told: d))).ToList();
        Assert.True(told.Count >= 20, $"Only {told.Count} of length.");
        foreach (var (entry, distinction) in told)
        {
            var own = entry.Adult.Length.Value.High!.Value;
            var others = All.Where(o => o != entry && o.Adult.Length.Value.Basis == LengthBasis.Total &&
                (distinction.Circle == Circle.Genus ? o.Genus == entry.Genus : o.Family.Value == entry.Family.Value))
                .Select(o => o.Adult.Length.Value.High!.Value).ToList();
            Assert.Equal(others.Count, distinction.Others);
            Assert.Equal(others.Count(o => distinction.IsHigh ? o < own : o > own), distinction.Beyond);
            Assert.Equal(
                distinction.IsHigh ? others.Where(o => o < own).Max() : others.Where(o => o > own).Min(),
                distinction.Next.Number);
        }
    }

    [Fact]
    public void Whoever_is_said_to_live_otherwise_does_so()
    {
        var told = All.SelectMany(e => Finder.Find(e, [], 50).OfType<WordDistinction>()
            .Where(d => d.Topic == "lives").Select(d => (Entry: e, Told: d))).ToList();
        Assert.NotEmpty(told);
        foreach (var (entry, distinction) in told)
        {
            var others = All.Where(o => o != entry &&
                (distinction.Circle == Circle.Genus ? o.Genus == entry.Genus : o.Family.Value == entry.Family.Value))
                .Select(o => o.Company.Lives.Value).ToList();
            Assert.Equal(others.Count, distinction.Others);
            Assert.Equal(others.Count(o => o != entry.Company.Lives.Value), distinction.Beyond);
        }
    }

    [Fact]
    public void At_most_one_in_four_may_go_as_far_and_nobody_stands_out_among_two()
    {
        var told = All.SelectMany(e => Finder.Find(e, [.. All.Take(12)], 50)).ToList();
        Assert.All(told, d =>
        {
            Assert.InRange(d.Others, DistinctionFinder.FewestOthers, All.Count);
            Assert.InRange((d.Others - d.Beyond + 1.0) / (d.Others + 1.0), 0, 0.25 + 1e-9);
            Assert.Equal(-Math.Log((d.Others - d.Beyond + 1.0) / (d.Others + 1.0)), d.Surprise, 12);
        });
    }

    [Fact]
    public void The_most_surprising_comes_first_and_each_is_about_something_else() => Assert.All(All, entry =>
    {
        var told = Finder.Find(entry, [.. All.Take(12)], 3);
        Assert.InRange(told.Count, 0, 3);
        Assert.Equal(told.Count, told.Select(d => d.Topic).Distinct().Count());
        Assert.Equal(told.Select(d => d.Surprise).OrderDescending(), told.Select(d => d.Surprise));
    });

    /// <summary>The smallest of eleven tetras of its family here, by the entries' own figures.</summary>
    [Fact]
    public void The_ember_tetra_stays_smaller_than_every_other_of_its_family()
    {
        var told = Finder.Find(RealContent.Collection.Find("hyphessobrycon-amandae")!, [], 3);
        var length = Assert.IsType<FigureDistinction>(Assert.Single(told, d => d.Topic == "length"));
        Assert.Equal((Circle.Family, false, length.Others), (length.Circle, length.IsHigh, length.Beyond));
    }

    [Fact]
    public void A_figure_borrowed_from_a_relative_sets_nobody_apart() => Assert.All(All, entry =>
        Assert.All(Finder.Find(entry, [.. All.Take(12)], 50).OfType<FigureDistinction>()
            .Where(d => d.Topic is "temperature" or "ph" or "hardness"), d =>
            Assert.True(entry.Range(d.Topic)!.Of(RangeKind.Keep)!.Evidence.IsOwn)));
}
