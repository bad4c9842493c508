using CareSheets.Arrivals;
using CareSheets.Species;
using CsCheck;

namespace CareSheets.Tests.Arrivals;

/// <summary>
/// Release dates by the shared-water rule: release(system) = max(arrival + days) over all batches that
/// joined it (Australian Department of Agriculture, Fisheries and Forestry, industry advice notice
/// 41-2025, seen in part).
/// </summary>
public sealed class ReleaseCalendarTests
{
    private static readonly Observation Fortnight = new(14, "common practice, no source");

    private static readonly Gen<Arrival[]> Arrivals = (
        from day in Gen.Int[0, 60]
        from batches in (
            from system in Gen.OneOf("A", "B", "C", "")
            from days in Gen.Int[0, 40].Nullable()
            select Shipment.Batch(system.Length == 0 ? null : system, days)).Array[1, 4]
        select Shipment.On(day, batches)).Array[1, 6];

    [Fact]
    public void A_batch_alone_waits_its_own_days()
    {
        var arrival = Shipment.On(3, Shipment.Batch("A"), Shipment.Batch(days: 28));
        var calendar = new ReleaseCalendar([arrival], Fortnight);
        Assert.Equal(Shipment.Start.AddDays(17), calendar.ReleaseOf(arrival, arrival.Batches[0]).Day);
        Assert.Equal(Shipment.Start.AddDays(31), calendar.ReleaseOf(arrival, arrival.Batches[1]).Day);
    }

    [Fact]
    public void All_that_share_water_wait_for_the_last_to_join_and_are_told_for_whom()
    {
        var first = Shipment.On(0, Shipment.Batch("A"));
        var second = Shipment.On(10, Shipment.Batch("A", said: "late"), Shipment.Batch("B"));
        var calendar = new ReleaseCalendar([first, second], Fortnight);
        var release = calendar.ReleaseOf(first, first.Batches[0]);
        Assert.Equal((Shipment.Start.AddDays(24), "late"), (release.Day, release.Last!.Batch.Said.Value));
        Assert.Null(calendar.ReleaseOf(second, second.Batches[0]).Last);
    }

    [Fact]
    public void A_longer_watch_begun_earlier_can_outlast_a_later_arrival()
    {
        var wild = Shipment.On(0, Shipment.Batch("A", days: 40));
        var bred = Shipment.On(10, Shipment.Batch("A"));
        var calendar = new ReleaseCalendar([wild, bred], Fortnight);
        Assert.Equal(Shipment.Start.AddDays(40), calendar.ReleaseOf(bred, bred.Batches[0]).Day);
        Assert.Null(calendar.Join("A", Shipment.Start.AddDays(20), 14));
    }

    [Fact]
    public void Joining_tells_the_old_and_the_new_day()
    {
        var calendar = new ReleaseCalendar([Shipment.On(0, Shipment.Batch("A"))], Fortnight);
        Assert.Equal(
            new Joining("A", Shipment.Start.AddDays(14), Shipment.Start.AddDays(27)),
            calendar.Join("A", Shipment.Start.AddDays(13), 14));
        Assert.Null(calendar.Join("B", Shipment.Start.AddDays(13), 14));
    }

    [Fact]
    public void Nobody_is_held_up_when_all_before_it_are_gone()
    {
        var gone = Shipment.Batch("A") with { Gone = Shipment.Sourced(Shipment.Start.AddDays(20)) };
        var calendar = new ReleaseCalendar([Shipment.On(0, gone)], Fortnight);
        Assert.NotNull(calendar.Join("A", Shipment.Start.AddDays(19), 14));
        Assert.Null(calendar.Join("A", Shipment.Start.AddDays(20), 14));
    }

    [Fact]
    public void The_day_is_the_largest_of_all_in_the_water_however_they_came() => Arrivals.Sample(all =>
    {
        var calendar = new ReleaseCalendar(all, Fortnight);
        foreach (var arrival in all)
        {
            foreach (var batch in arrival.Batches)
            {
                var expected = all.SelectMany(a => a.Batches.Select(b => (a, b)))
                    .Where(o => ReferenceEquals(o.b, batch) || (batch.System is not null && o.b.System == batch.System))
                    .Max(o => o.a.Date.Value.AddDays(o.b.Days ?? 14));
                Assert.Equal(expected, calendar.ReleaseOf(arrival, batch).Day);
            }
        }
    });

    [Fact]
    public void One_more_batch_never_brings_a_day_forward() => Gen.Select(Arrivals, Arrivals).Sample((some, more) =>
    {
        var before = new ReleaseCalendar(some, Fortnight);
        var after = new ReleaseCalendar([.. some, .. more], Fortnight);
        foreach (var arrival in some)
            Assert.All(arrival.Batches, b =>
                Assert.True(after.ReleaseOf(arrival, b).Day >= before.ReleaseOf(arrival, b).Day));
    });
}
