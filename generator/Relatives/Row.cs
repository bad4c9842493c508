using CareSheets.Statistics;

namespace CareSheets.Relatives;

/// <summary>
/// One number of every entry, such as a figure's middle or a trait, with what relatives foretell of it.
/// </summary>
/// <param name="Values">By entry; nothing where unknown or set aside.</param>
/// <param name="Foretold">By entry, its own value left out.</param>
internal sealed record Row(IReadOnlyList<double?> Values, IReadOnlyList<Normal?> Foretold)
{
    /// <summary>One odd number must not drag another along: it counts up to this many standard deviations.</summary>
    private const double Limit = 2.5;

    public int Known { get; } = Values.Count(v => v is not null);

    /// <summary>By entry: its own number, or what relatives foretell where it has none.</summary>
    public double[] Column() => [.. Values.Select((value, entry) => Foretold[entry] is not { } foretold
        ? value ?? 0
        : value is { } known
            ? foretold.Mean + Math.Clamp(foretold.Z(known), -Limit, Limit) * foretold.StandardDeviation
            : foretold.Mean)];
}
