namespace CareSheets.Quantities.Notation;

/// <summary>The two figures of a range in some unit, either of which may be missing.</summary>
internal readonly record struct Ends(double? Low, double? High)
{
    public bool IsSingle => Low is not null && Low == High;

    public Ends In(Unit unit) => new(
        Low is { } low ? unit.FromCanonical(low) : null,
        High is { } high ? unit.FromCanonical(high) : null);

    /// <summary>
    /// To the unit's step, or to a tenth of it and so on where the ends would cross and leave
    /// nothing. Ends too close even for the finest step go to the nearest figure.
    /// </summary>
    public Ends Round(Unit unit, Rounding rounding, bool zeroIsValue)
    {
        for (var tenths = 0; tenths <= Step.Finest; tenths++)
        {
            var rounded = RoundTo(unit, tenths, rounding, zeroIsValue);
            if (!(rounded.Low > rounded.High))
            {
                return rounded;
            }
        }

        return RoundTo(unit, Step.Finest, Rounding.Nearest, zeroIsValue);
    }

    public bool IsCloseTo(Ends other) =>
        IsClose(Low, other.Low) && IsClose(High, other.High);

    private Ends RoundTo(Unit unit, int tenths, Rounding rounding, bool zeroIsValue)
    {
        var (up, down) = rounding == Rounding.Inward
            ? (Rounding.Upward, Rounding.Downward)
            : (rounding, rounding);
        return new(
            Low is { } low ? RoundEnd(low, unit.StepAt(low), tenths, up, zeroIsValue) : null,
            High is { } high ? RoundEnd(high, unit.StepAt(high), tenths, down, zeroIsValue) : null);
    }

    /// <summary>
    /// An amount that is there never becomes nothing; a place on a scale may be zero.
    /// </summary>
    private static double RoundEnd(
        double value, double step, int tenths, Rounding rounding, bool zeroIsValue)
    {
        var rounded = Step.Round(value, step, tenths, rounding);
        return rounded == 0 && value != 0 && !zeroIsValue && tenths < Step.Finest
            ? RoundEnd(value, step, tenths + 1, rounding, zeroIsValue)
            : rounded;
    }

    private static bool IsClose(double? one, double? other) =>
        one is null || other is null || Step.AreSame(one.Value, other.Value);
}
