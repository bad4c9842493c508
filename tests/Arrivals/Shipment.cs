using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Tests.Arrivals;

/// <summary>Made-up arrivals and batches with what a test cares for.</summary>
internal static class Shipment
{
    public static readonly DateOnly Start = new(2026, 11, 1);

    public static Arrival On(int day, params Batch[] batches) => new()
    {
        Name = $"day-{day}",
        Supplier = Sourced("Larkwater Imports"),
        Date = Sourced(Start.AddDays(day)),
        Batches = batches,
    };

    public static Batch Batch(string? system = null, int? days = null, string said = "fish") => new()
    {
        Span = SourceSpan.None,
        Said = Sourced(said),
        System = system is null ? null : Sourced(system),
        Days = days,
    };

    public static Sourced<T> Sourced<T>(T value) => new(value, SourceSpan.None);

    public static StatedRange Stated(string text, Dimension dimension, bool isAnimal = false)
    {
        var parsed = QuantityText.Parse(text, dimension, isAnimal);
        Assert.True(parsed.Ok, text);
        return parsed.Value;
    }

    public static StatedRange Size(string text) => Stated(text, DimensionCatalogue.Length, isAnimal: true);
}
