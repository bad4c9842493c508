namespace CareSheets.Quantities;

/// <summary>
/// A range as somebody wrote it down, with what it comes to in the canonical unit.
/// </summary>
public sealed record StatedRange
{
    public required Dimension Dimension { get; init; }

    /// <summary>Lower end in the canonical unit, inclusive; none if open below.</summary>
    public required double? Low { get; init; }

    /// <summary>Upper end in the canonical unit, inclusive; none if open above.</summary>
    public required double? High { get; init; }

    /// <summary>The unit it was written in.</summary>
    public required Unit Unit { get; init; }

    public Bound Bound { get; init; }

    /// <summary>Only lengths of animals have one.</summary>
    public LengthBasis? Basis { get; init; }

    /// <summary>The writer's own characters, without the space around them.</summary>
    public required string Typed { get; init; }

    /// <summary>
    /// Tidied for readers, every digit as typed: "20–25 °C", "> 5 °dH", "6.5", "2.5 cm TL".
    /// </summary>
    public required string Text { get; init; }

    /// <summary>A length without the mark of its basis, for readers who are told of it in words.</summary>
    public StatedRange WithoutBasis() =>
        Basis is null ? this : this with { Basis = null, Text = Text[..Text.LastIndexOf(' ')] };

    public bool IsSingle => Low is not null && Low == High;

    /// <exception cref="InvalidOperationException">T measures something else.</exception>
    public Range<T> As<T>()
        where T : struct, IQuantity<T>
    {
        if (T.Dimension != Dimension)
        {
            throw new InvalidOperationException($"A {Dimension} is not a {T.Dimension}.");
        }

        return (Low, High) switch
        {
            ({ } low, { } high) => Range<T>.Between(T.FromCanonical(low), T.FromCanonical(high)),
            ({ } low, null) => Range<T>.AtLeast(T.FromCanonical(low)),
            (null, { } high) => Range<T>.AtMost(T.FromCanonical(high)),
            (null, null) => default,
        };
    }
}
