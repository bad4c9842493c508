using CareSheets.Arrivals;

namespace CareSheets.Tests.Arrivals;

/// <summary>Deaths to the seventh day, on which the count ends (Lim, Dhert and Sorgeloos 2003).</summary>
public sealed class LossCountTests
{
    [Theory]
    [InlineData(100, 98, 2, 4, false)]
    [InlineData(100, 97, 2, 5, true)]
    [InlineData(100, 95, 0, 5, true)]
    [InlineData(19, 18, 0, 1, true)]
    [InlineData(21, 20, 0, 1, false)]
    public void The_alarm_goes_from_five_in_a_hundred_on(int promised, int alive, int later, int lost, bool alarm)
    {
        var losses = Count(promised, alive, (6, later))!;
        Assert.Equal((lost, alarm), (losses.Lost, losses.IsAlarming));
    }

    [Fact]
    public void The_seventh_day_counts_and_the_eighth_does_not() =>
        Assert.Equal(
            (1, 2, 3), Count(50, 49, (0, 1), (7, 1), (8, 10)) is { } c ? (c.OnArrival, c.Later, c.Lost) : default);

    [Fact]
    public void Where_the_list_promises_nothing_those_alive_are_what_is_counted_from() =>
        Assert.Equal((0, 2, 20), Count(null, 20, (1, 2)) is { } c ? (c.OnArrival, c.Later, c.Of) : default);

    [Fact]
    public void Nobody_says_anything_before_the_bags_are_open_or_of_no_fish()
    {
        Assert.Null(Count(20, null));
        Assert.Null(Count(null, 0));
    }

    [Fact]
    public void A_bag_in_which_all_died_is_a_loss_of_all() => Assert.Equal(1, Count(12, 0)!.Share);

    private static LossCount? Count(int? promised, int? alive, params (int Day, int Count)[] losses)
    {
        var batch = Shipment.Batch() with
        {
            Count = promised is { } p ? Shipment.Sourced(p) : null,
            Alive = alive is { } a ? Shipment.Sourced(a) : null,
            Losses = [.. losses.Select(l => new Loss(
                Shipment.Sourced(Shipment.Start.AddDays(l.Day)), Shipment.Sourced(l.Count)))],
        };
        return LossCount.From(Shipment.On(0, batch), batch);
    }
}
