using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Pages.Mates;
using CareSheets.Quantities;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Aspects;
using CsCheck;

namespace CareSheets.Tests.Tankmates;

/// <summary>What sentences on pairs say of figures: never two things of one, nor the opposite of the verdict.</summary>
public sealed partial class SentenceTests
{
    private static readonly List<(ReasonKind Kind, Verdict Pair, string Text)> Said =
    [
        .. from other in Enumerable.Range(1, Shop.Mates.Mates.Count - 1)
           from one in Enumerable.Range(0, other)
           let pair = Shop.Mates.Pair(one, other)
           from reason in pair.Reasons
           select (reason.Reason.Kind, pair.Verdict, new MateSentences(Shop.Site).Of(reason, pair.Verdict)),
    ];

    [Fact]
    public void A_figure_is_translated_alike_wherever_it_stands_in_a_sentence()
    {
        var touched = 0;
        foreach (var (_, _, text) in Said.Where(s => s.Kind is ReasonKind.WaterApart or ReasonKind.WaterNarrow or
            ReasonKind.BestApart))
        {
            var translations = Both().Matches(text).SelectMany(Pairs).Distinct().ToList();
            touched += translations.Count;
            Assert.Equal(translations.Select(t => t.Metric).Distinct().Count(), translations.Count);
        }
        Assert.True(touched > 500, $"{touched}");
    }

    [Fact]
    public void Of_a_pair_to_be_kept_apart_no_reason_advises_how_to_keep_it_together()
    {
        string[] advice = ["watch how", "see that it", "give each", "give shade"];
        var softer = Said.Where(s => s.Kind is ReasonKind.Feisty or ReasonKind.NipsFins or ReasonKind.FlowDiffers or
            ReasonKind.LightDiffers).ToLookup(s => s.Pair == Verdict.KeepApart);
        Assert.NotEmpty(softer[true]);
        Assert.All(Said.Where(s => s.Pair == Verdict.KeepApart), s => Assert.All(advice, a =>
            Assert.DoesNotContain(a, s.Text, StringComparison.Ordinal)));
        Assert.All(softer[false], s => Assert.Contains(advice, a => s.Text.Contains(a, StringComparison.Ordinal)));
    }

    [Fact]
    public void No_sentence_makes_a_word_of_pH()
    {
        Assert.Contains(Said, s => s.Text.StartsWith("pH: ", StringComparison.Ordinal));
        Assert.All(Said, s => Assert.DoesNotContain("PH", s.Text, StringComparison.Ordinal));
    }

    /// <summary>What is beyond looks beyond after rounding, and what passes looks as if it passed.</summary>
    [Fact]
    public void Rounding_never_turns_a_mouth_and_its_prey_around() =>
        Gen.Select(Fish.Bodies, Fish.Bodies).Sample((one, other) =>
        {
            var (predator, prey) = (Figures(one), Figures(other));
            if (Predation.Depth(other) > Predation.Gape(one))
                Assert.True(prey["depth"] > predator["small_gape"]);
            else
                Assert.True(prey["depth"] <= predator["gape"]);
            if (Predation.SmallestTotal(other) > Predation.Reach(one))
                Assert.True(prey["total"] > predator["short_reach"]);
        });

    [Theory]
    [InlineData(9.5, BodyShape.EelLike, ReasonKind.MightSwallowLonger)] // reach is 9.2 cm
    [InlineData(8.0, BodyShape.Disc, ReasonKind.MightSwallowDeeper)]
    [InlineData(11.0, BodyShape.Deep, ReasonKind.MightSwallow)] // 3.52 cm deep, and the gape is 3.51
    [InlineData(11.5, BodyShape.Deep, null)]
    public void Only_what_is_beyond_is_said_to_be(double cm, BodyShape shape, ReasonKind? expected)
    {
        var predator = Fish.Plain("predator") with
        {
            Body = new Body(Stretch.Exactly(20), LengthBasis.Total, BodyShape.Fusiform, Mouth.Small, Appetite.Hunter),
        };
        var prey = Fish.Plain("prey") with
        {
            Body = Fish.Plain("prey").Body with { Length = Stretch.Exactly(cm), Shape = shape },
        };
        Assert.Equal(expected, new SwallowingAspect().Judge(predator, prey).SingleOrDefault()?.Kind);
    }

    private static Dictionary<string, double> Figures(Body body) => new SwallowingAspect()
        .Details(Fish.Plain("one") with { Body = body })
        .Where(d => d.Blank is "depth" or "gape" or "small_gape" or "total" or "short_reach")
        .ToDictionary(d => d.Blank, d => double.Parse(
            QuantityFormat.Computed(
                d.Dimension!, d.Range.Low, d.Range.High, UnitSystem.Metric, d.Rounding).Text.Split(' ')[0],
            CultureInfo.InvariantCulture));

    /// <summary>Ends of a range and of its translation, one by one.</summary>
    private static IEnumerable<(string Metric, string US)> Pairs(Match match)
    {
        var unit = match.Groups["unit"].Value;
        string[] metric = match.Groups["metric"].Value.Split('–'), us = match.Groups["us"].Value.Split('–');
        return metric.Zip(us, (m, u) => ($"{m} {unit}", u));
    }

    [GeneratedRegex(@"(?<metric>[\d.–]+) (?<unit>°C|°dH) \((?:[≤≥] )?(?<us>[\d.–]+) ")]
    private static partial Regex Both();
}
