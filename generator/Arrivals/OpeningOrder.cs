using CareSheets.Species;

namespace CareSheets.Arrivals;

/// <summary>
/// Which bag is opened first: the most crowded, longest closed and farthest from its temperature.
/// The rule of thumb is loading × hours × difference²; common practice, no source. We add 1 K² to the
/// square, so that bags at the right temperature still differ by crowding and time, and take the
/// difference from the middle of what the species is kept at rather than from 27 °C, for not all fish
/// are of warm water. What is unknown of a batch counts as the worst known of the arrival.
/// </summary>
public static class OpeningOrder
{
    private const double UsualCelsius = 27;

    /// <param name="arrival">The arrival; batches that are gone are still told.</param>
    /// <param name="entryOf">The entry of a batch; nothing while nobody knows it.</param>
    /// <returns>The most urgent first; equals by their place in the list.</returns>
    public static IReadOnlyList<OpeningPlace> Of(Arrival arrival, Func<Batch, Entry?> entryOf)
    {
        List<(Batch Batch, double? Loading, double? Hours, double? Difference)> known =
        [
            .. from batch in arrival.Batches
               let bag = arrival.BagOf(batch)
               select (batch, Loading(batch, entryOf(batch)), arrival.HoursClosed(bag),
                   Difference(bag, entryOf(batch))),
        ];
        var (loading, hours, difference) =
            (known.Max(k => k.Loading) ?? 1, known.Max(k => k.Hours) ?? 1, known.Max(k => k.Difference) ?? 0);
        return
        [
            .. known.Select(k => new OpeningPlace(
                k.Batch, k.Loading, k.Hours, k.Difference,
                Urgency(k.Loading ?? loading, k.Hours ?? hours, k.Difference ?? difference)))
                .OrderByDescending(p => p.Urgency),
        ];
    }

    public static double Urgency(double loading, double hours, double difference) =>
        loading * hours * (1 + difference * difference);

    private static double? Loading(Batch batch, Entry? entry) =>
        (batch.Count ?? batch.Alive)?.Value is { } count && batch.Water?.High is > 0 and var litres
            ? count * FishWeight.Of(batch.Size, entry) / litres
            : null;

    private static double? Difference(MeasuredBag? bag, Entry? entry)
    {
        if (bag?.Temperature is not { Low: { } low, High: { } high })
            return null;
        var keep = entry?.Range("temperature")?.Of(RangeKind.Keep)?.Range.Value;
        var middle = keep is { Low: { } cool, High: { } warm } ? (cool + warm) / 2 : UsualCelsius;
        return Math.Abs((low + high) / 2 - middle);
    }
}
