using CareSheets.Relatives;
using CareSheets.Statistics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>The engine's own record, held against a count made another way.</summary>
public sealed class OwnRecordTests
{
    private static readonly RelativesEngine Engine = RelativesEngine.Ask(RealContent.Collection);
    private static readonly IReadOnlyList<RecordLine> Lines = OwnRecord.Keep(Engine);

    [Fact]
    public void Every_compared_figure_stands_in_it_for_each_way_of_hiding()
    {
        var stated = ComparedFigure.All(RealContent.Collection.Figures)
            .Where(f => RealContent.Collection.Entries.Count(e => f.Own(e) is not null) >= EstimateMaker.FewestValues);
        foreach (var left in Enum.GetValues<LeftOut>())
            Assert.Equal(stated.Select(f => f.Field), Lines.Where(l => l.LeftOut == left).Select(l => l.Figure.Field));
    }

    /// <summary>Temperature is linear and the whole entry hidden: a refit without each value must agree.</summary>
    [Fact]
    public void With_all_hidden_it_equals_predictions_without_the_value_at_the_same_variances()
    {
        var fit = Engine.Fits[Engine.FigureOf("temperature")!.Value];
        var line = Lines.Single(l => l.LeftOut == LeftOut.Entry && l.Figure.Field == "temperature");
        var (errors, crps, covered, count) = (0.0, 0.0, 0, 0);
        for (var left = 0; left < fit.Values.Count; left++)
        {
            if (fit.Values[left] is not { } value)
                continue;
            var without = NestedSample.From(
                Engine.Kinship.Tree,
                [.. fit.Values.Select((v, i) => i == left || fit.SetAside.Contains(i) ? null : v?.Middle)]);
            var foretold = NestedPredictions.Compute(without, fit.Middles.Fit!.Variances).WithoutOwnValue(left)!;
            errors += Math.Abs(foretold.Mean - value.Middle);
            crps += foretold.Crps(value.Middle);
            covered += foretold.CentralInterval(0.8).Contains(value.Middle) ? 1 : 0;
            count++;
        }
        Assert.Equal(count, line.Count);
        Assert.Equal(errors / count, line.Error, 1e-9);
        Assert.Equal(covered, line.Coverage.Single(c => c.Claimed == 0.8).Covered);
        Assert.Equal(crps / count, line.Crps, 0.002); // the record scores 400 quantiles, this the formula
    }

    [Fact]
    public void Wider_intervals_hold_more()
    {
        Assert.All(Lines, l => Assert.True(
            l.Coverage[0].Covered <= l.Coverage[1].Covered && l.Coverage[1].Covered <= l.Coverage[2].Covered));
        Assert.All(Lines, l => Assert.All(
            l.Coverage, c => Assert.Equal((c.Low, c.High), Coverage.AcceptanceBand(l.Count, c.Claimed))));
    }

    [Fact]
    public void Who_states_the_hardness_is_foretold_more_surely_in_acidity_than_who_lacks_it()
    {
        var (acidity, hardness) = (Engine.FigureOf("ph")!.Value, Engine.FigureOf("hardness")!.Value);
        var lacking = Engine.Fits[hardness].Values.Index()
            .First(v => v.Item is null && Engine.Fits[acidity].Values[v.Index] is null).Index;
        var stating = Engine.Fits[hardness].Values.Index().First(v => v.Item is not null).Index;
        double Shrinks(int entry) => Engine.Foretold(acidity, entry)!.StandardDeviation /
            Engine.Fits[acidity].Foretold(entry)!.StandardDeviation;
        Assert.True(Shrinks(stating) < 0.9 * Shrinks(lacking), $"{Shrinks(stating)} {Shrinks(lacking)}");
    }
}
