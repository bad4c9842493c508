namespace CareSheets.Quantities.Notation;

/// <summary>A range taken apart into what stands where, before anything is understood.</summary>
internal sealed record QuantityParts
{
    public Bound Bound { get; init; }

    /// <summary>Words before the first figure, such as "pH".</summary>
    public TextPart? Prefix { get; init; }

    public required NumberPart First { get; init; }

    public TextPart? FirstUnit { get; init; }

    public NumberPart? Second { get; init; }

    public TextPart? SecondUnit { get; init; }

    /// <summary>Index after the last figure: where a missing unit should stand.</summary>
    public int AfterFigures => Second?.End ?? First.End;

    /// <summary>Both figures with the digits as typed, or the one.</summary>
    public string Figures => RangeText.Figures(
        First.Digits, Second is { } second && second.Value != First.Value ? second.Digits : null);

    /// <summary>The same with its figures in the other order.</summary>
    public QuantityParts Swapped() =>
        Second is { } second ? this with { First = second, Second = First } : this;
}
