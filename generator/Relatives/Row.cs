using CareSheets.Species;
using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// One number of every entry, such as a figure's middle or a trait, with what relatives foretell of it.
/// </summary>
/// <param name="Of">The number of an entry; nothing where unknown.</param>
/// <param name="Values">By entry; nothing where unknown or set aside.</param>
/// <param name="Foretold">By entry, its own value left out.</param>
internal sealed record Row(
    Func<Entry, double?> Of, IReadOnlyList<double?> Values, IReadOnlyList<Normal?> Foretold)
{
    /// <summary>One odd number must not drag another along: it counts up to this many standard deviations.</summary>
    private const double Limit = 2.5;

    public int Known { get; } = Values.Count(v => v is not null);

    /// <summary>An entry's own number, or what relatives foretell where it has none.</summary>
    public double Number(int entry) => Foretold[entry] is not { } foretold
        ? Values[entry] ?? 0
        : Values[entry] is { } known
            ? foretold.Mean + Math.Clamp(foretold.Z(known), -Limit, Limit) * foretold.StandardDeviation
            : foretold.Mean;

    public double[] Column() => [.. Enumerable.Range(0, Values.Count).Select(Number)];

    public Row With(int entry, double? value)
    {
        var values = Values.ToArray();
        values[entry] = value;
        return new Row(Of, values, Foretold); // not by with, or Known would stay
    }
}
