using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;
using CsCheck;

namespace CareSheets.Tests.Tankmates;

/// <summary>What holds for any species whatever: no verdict gets better by a fact that makes things worse.</summary>
public sealed class LawTests
{
    private static readonly Gen<(Tankmate One, Tankmate Other)> Pairs =
        Gen.Select(Fish.Any("one"), Fish.Any("other"));

    [Fact]
    public void Asking_either_way_gives_the_same_verdict_and_the_same_reasons() =>
        Pairs.Sample((one, other) =>
        {
            var (here, there) = (Fish.Judge.Judge(one, other), Fish.Judge.Judge(other, one));
            Assert.Equal(here.Verdict, there.Verdict);
            Assert.Equal(Said(here), Said(there));
        });

    [Fact]
    public void All_three_verdicts_occur_among_made_up_pairs()
    {
        var seen = new HashSet<Verdict>();
        Gen.Select(Fish.Bodies, Fish.Bodies).Sample(
            (one, other) =>
            {
                var pair = Fish.Judge.Judge(
                    Fish.Plain("one") with { Body = one }, Fish.Plain("other") with { Body = other });
                lock (seen)
                    seen.Add(pair.Verdict);
            },
            iter: 2000);
        Assert.Equal(Enum.GetValues<Verdict>(), seen.Order());
    }

    [Fact]
    public void Widening_a_range_never_worsens_and_narrowing_never_improves() =>
        Gen.Select(Pairs, Gen.Int[0, 2], Gen.Double[0, 3], Gen.Double[0, 3], Gen.Bool).Sample(
            (pair, which, below, above, preferred) =>
            {
                var wider = Widen(pair.One, which, below, above, preferred);
                Assert.True(VerdictOf(wider, pair.Other) <= VerdictOf(pair.One, pair.Other));
            });

    [Fact]
    public void A_figure_that_is_unknown_is_named_and_never_fine() =>
        Gen.Select(Pairs, Gen.Int[0, 2]).Sample((pair, which) =>
        {
            var silent = pair.One with
            {
                Water = [.. pair.One.Water.Select((w, i) => i == which ? w with { Keep = null, Prefers = null } : w)],
            };
            var judged = Fish.Judge.Judge(silent, pair.Other);
            Assert.NotEqual(Verdict.Suits, judged.Verdict);
            Assert.Contains(judged.Reasons, r => r.Reason.Field == Fish.Ranges[which].Field &&
                r.Reason.Kind is ReasonKind.UnknownOfOne or ReasonKind.UnknownOfOther or ReasonKind.UnknownOfBoth);
        });

    [Fact]
    public void A_larger_predator_or_smaller_prey_never_improves() =>
        Gen.Select(Fish.Bodies, Fish.Bodies, Gen.Double[1, 3], Gen.Double[0.3, 1]).Sample(
            (first, second, grow, shrink) =>
            {
                var (predator, prey) = Predation.LargestTotal(first) >= Predation.LargestTotal(second)
                    ? (first, second) : (second, first);
                if (Predation.LargestTotal(prey) > Predation.MuchLarger * Predation.SmallestTotal(predator))
                    return; // of two kinds with young and old, each endangers the other: growth then helps one
                var before = Meeting(predator, prey);
                Assert.True(Meeting(Scaled(predator, grow), prey) >= before);
                Assert.True(Meeting(predator, Scaled(prey, shrink)) >= before);
            });

    [Fact]
    public void Another_species_never_improves_a_group_or_its_tank() =>
        Gen.Select(Fish.Any("a"), Fish.Any("b"), Fish.Any("c"), Tanks).Sample((a, b, c, tank) =>
        {
            var (few, more) = (Group(tank, a, b), Group(tank, a, b, c));
            Assert.True(more.Verdict >= few.Verdict);
            Assert.True(more.Fit >= few.Fit);
        });

    [Fact]
    public void Order_and_naming_one_twice_change_nothing_in_a_group() =>
        Gen.Select(Fish.Any("a"), Fish.Any("b"), Fish.Any("c"), Tanks).Sample((a, b, c, tank) =>
        {
            var (one, other) = (Group(tank, a, b, c), Group(tank, c, a, b, a, c));
            Assert.Equal(one.Mates, other.Mates);
            Assert.Equal((one.Verdict, one.Fit, one.Count), (other.Verdict, other.Fit, other.Count));
            Assert.Equal(one.Water.Select(w => w.Shared), other.Water.Select(w => w.Shared));
            Assert.Equal(one.Pairs.SelectMany(Said), other.Pairs.SelectMany(Said));
        });

    [Fact]
    public void A_group_shares_what_its_tightest_pair_shares() =>
        Gen.Select(Fish.Any("a"), Fish.Any("b"), Fish.Any("c")).Sample((a, b, c) =>
        {
            foreach (var range in Fish.Ranges)
            {
                var all = SharedWater.Of(range, [a, b, c]).Shared;
                var pairs = new[] { (a, b), (a, c), (b, c) }
                    .Select(p => SharedWater.Of(range, [p.Item1, p.Item2]))
                    .Where(s => s.Unknown.Count < 2).ToList();
                Assert.Equal(pairs.Any(p => p.Shared is null), all is null && pairs.Count > 0);
                Assert.All(pairs, p => Assert.True(all is null || p.Shared!.Value.Overlap(all.Value) == all));
            }
        });

    [Fact]
    public void The_unit_a_figure_was_written_in_changes_nothing() =>
        Gen.Select(Gen.Int[55, 95], Gen.Int[0, 20]).Sample((low, width) =>
        {
            Tankmate With(string text) => Fish.Plain("one") with
            {
                Water = [.. Fish.Plain("one").Water.Select(w => w.Declaration == Fish.Temperature
                    ? w with { Keep = Read(text) } : w)],
            };
            static Stretch Read(string text) =>
                Stretch.From(QuantityText.Parse(text, DimensionCatalogue.Temperature).Value);
            string Celsius(int fahrenheit) => Temperature.FromFahrenheit(fahrenheit).InCelsius
                .ToString("F9", System.Globalization.CultureInfo.InvariantCulture);
            var fahrenheit = With($"{low}–{low + width} °F");
            var celsius = With($"{Celsius(low)}–{Celsius(low + width)} °C");
            Assert.Equal(
                VerdictOf(fahrenheit, Fish.Plain("other")), VerdictOf(celsius, Fish.Plain("other")));
        });

    private static Gen<TankSize> Tanks =>
        from length in Gen.Double[20, 300]
        from width in Gen.Double[20, 100]
        from height in Gen.Double[20, 100]
        from sides in Gen.Bool
        select sides
            ? TankSize.OfBox(
                Length.FromCentimetres(length), Length.FromCentimetres(width), Length.FromCentimetres(height))
            : TankSize.OfVolume(Volume.FromLitres(length));

    private static IEnumerable<(string, string, Reason)> Said(Pairing pair) =>
        pair.Reasons.Select(r => (r.One.Name, r.Other.Name, r.Reason));

    private static Verdict VerdictOf(Tankmate one, Tankmate other) => Fish.Judge.Judge(one, other).Verdict;

    private static Verdict Meeting(Body predator, Body prey) => VerdictOf(
        Fish.Plain("predator") with { Body = predator },
        Fish.Plain("prey") with { Body = prey with { Appetite = Appetite.None } });

    private static Gathering Group(TankSize tank, params Tankmate[] mates) => Gathering.Of(mates, Fish.Ranges, tank);

    private static Body Scaled(Body body, double by) =>
        body with { Length = Stretch.Between(body.Length.Low * by, body.Length.High * by) };

    private static Tankmate Widen(Tankmate mate, int which, double below, double above, bool preferred)
    {
        Stretch? Wider(Stretch? range) =>
            range is { } known ? Stretch.Between(known.Low - below, known.High + above) : null;
        return mate with
        {
            Water = [.. mate.Water.Select((need, i) => i != which ? need
                : preferred ? need with { Prefers = Wider(need.Prefers) } : need with { Keep = Wider(need.Keep) })],
        };
    }
}
