using CareSheets.Arrivals;
using CareSheets.Quantities;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Arrivals;

/// <summary>Which bag is opened first, and what the fish in it weigh.</summary>
public sealed class OpeningOrderTests
{
    [Fact]
    public void The_more_crowded_the_longer_closed_and_the_colder_a_bag_the_sooner_it_is_opened()
    {
        var usual = OpeningOrder.Urgency(20, 10, 2);
        Assert.Equal(20 * 10 * (1 + 4), usual, 9);
        Assert.All(
            [OpeningOrder.Urgency(21, 10, 2), OpeningOrder.Urgency(20, 11, 2), OpeningOrder.Urgency(20, 10, 2.1)],
            more => Assert.True(more > usual));
    }

    [Fact]
    public void Bags_at_the_right_temperature_still_differ_by_crowding() =>
        Assert.True(OpeningOrder.Urgency(40, 10, 0) > OpeningOrder.Urgency(20, 10, 0));

    [Fact]
    public void Of_two_lots_of_one_fish_the_one_with_less_water_comes_first()
    {
        var roomy = Lot("roomy", "20 L");
        var tight = Lot("tight", "5 L");
        Assert.Equal(["tight", "roomy"], Order(roomy, tight).Select(p => p.Batch.Said.Value));
    }

    [Fact]
    public void What_is_not_known_counts_as_the_worst_known_of_the_arrival()
    {
        var places = Order(Lot("known", "5 L"), Lot("unknown", null));
        Assert.Equal(places[0].Urgency, places[1].Urgency);
        Assert.Null(places.Single(p => p.Batch.Said.Value == "unknown").Loading);
        Assert.True(places.All(p => p.IsAssumed)); // nobody wrote when the bags were closed
    }

    [Fact]
    public void The_temperature_counts_from_what_the_species_is_kept_at_and_not_from_a_warm_tank()
    {
        var cool = RealContent.Collection.Find("tanichthys-albonubes")!; // kept at 58–72 °F, 14.4–22.2 °C
        var warm = RealContent.Collection.Find("mikrogeophagus-ramirezi")!; // kept at 26–30 °C
        var lot = Lot("white clouds", "10 L", "Cool");
        var rams = Lot("rams", "10 L", "Cool");
        var arrival = Shipment.On(0, lot, rams) with { Bags = [Bag("Cool", "19 °C")] };
        var places = OpeningOrder.Of(arrival, b => b.Said.Value == "rams" ? warm : cool);
        Assert.Equal(9, places.Single(p => p.Batch.Said.Value == "rams").Difference!.Value, 6);
        Assert.InRange(places.Single(p => p.Batch.Said.Value == "white clouds").Difference!.Value, 0.5, 1);
        Assert.Equal("rams", places[0].Batch.Said.Value);
    }

    [Fact]
    public void The_hours_come_from_the_bag_or_from_packing_to_opening()
    {
        var arrival = Shipment.On(1) with
        {
            Packed = Shipment.Sourced(new DateTime(2026, 11, 1, 16, 0, 0)),
            Opened = Shipment.Sourced(new DateTime(2026, 11, 2, 18, 30, 0)),
        };
        Assert.Equal(26.5, arrival.HoursClosed(null));
        Assert.Equal(20, arrival.HoursClosed(Bag("A", "20 °C") with { Hours = 20 }));
        Assert.Null(Shipment.On(1).HoursClosed(null));
    }

    /// <summary>
    /// A neon of 3 cm weighs about a third of a gram and a fish of 10 cm 10 to 14 g, from memory; the
    /// cube law makes eight of one where length doubles.
    /// </summary>
    [Fact]
    public void A_fish_weighs_what_its_length_and_shape_make_likely()
    {
        double Grams(string size, string? shape = null) => FishWeight.Of(
            Shipment.Size(size), shape is null ? null : RealContent.Collection.Find(shape))!.Value;
        Assert.InRange(Grams("3 cm TL"), 0.25, 0.45);
        Assert.InRange(Grams("10 cm TL"), 10, 14);
        Assert.InRange(Grams("6 cm TL") / Grams("3 cm TL"), 7.5, 9);
        Assert.True(Grams("3 cm SL") > Grams("3 cm TL"));
        Assert.True(Grams("10 cm TL", "pterophyllum-altum") > Grams("10 cm TL"));
        Assert.True(Grams("8 cm TL", "pangio-kuhlii") < Grams("8 cm TL") / 5);
        Assert.Null(FishWeight.Of(Shipment.Size("20 cm DW"), null));
    }

    private static IReadOnlyList<OpeningPlace> Order(params Batch[] batches) =>
        OpeningOrder.Of(Shipment.On(0, batches), _ => null);

    private static Batch Lot(string said, string? water, string? system = null) =>
        Shipment.Batch(system, said: said) with
        {
            Count = Shipment.Sourced(50),
            Size = Shipment.Size("3 cm TL"),
            Water = water is null ? null : Shipment.Stated(water, DimensionCatalogue.Volume),
        };

    private static MeasuredBag Bag(string system, string temperature) => new(
        Shipment.Sourced(system), null, null,
        Shipment.Stated(temperature, DimensionCatalogue.Temperature), null, null, null);
}
