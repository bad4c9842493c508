namespace CareSheets.Quantities.Notation;

/// <summary>The two figures of a range in some unit, either of which may be missing.</summary>
internal readonly record struct Ends(double? Low, double? High)
{
    /// <summary>Ten times finer each time; the last is finer than any figure shown.</summary>
    private const int MostRefinements = 9;

    public bool IsSingle => Low is not null && Low == High;

    public Ends In(Unit unit) => new(
        Low is { } low ? unit.FromCanonical(low) : null,
        High is { } high ? unit.FromCanonical(high) : null);

    /// <summary>
    /// To the unit's step, or to a tenth of it and so on where the step would leave nothing: the
    /// ends crossed, or an amount gone to zero.
    /// </summary>
    public Ends Round(Unit unit, Rounding rounding, bool zeroIsValue)
    {
        var rounded = this;
        var refinement = 1.0;
        for (var i = 0; i <= MostRefinements; i++, refinement *= 10)
        {
            rounded = RoundTo(unit, refinement, rounding);
            if (!(rounded.Low > rounded.High) && (zeroIsValue || !rounded.LostSomething(this)))
            {
                return rounded;
            }
        }

        return rounded.Low > rounded.High ? this : rounded;
    }

    public bool IsCloseTo(Ends other) =>
        IsClose(Low, other.Low) && IsClose(High, other.High);

    private Ends RoundTo(Unit unit, double refinement, Rounding rounding) => new(
        Low is { } low ? Step.Round(low, unit.StepAt(low), refinement, LowEnd(rounding)) : null,
        High is { } high
            ? Step.Round(high, unit.StepAt(high), refinement, HighEnd(rounding))
            : null);

    private bool LostSomething(Ends original) =>
        (Low == 0 && original.Low != 0) || (High == 0 && original.High != 0);

    private static Rounding LowEnd(Rounding rounding) =>
        rounding == Rounding.Inward ? Rounding.Upward : rounding;

    private static Rounding HighEnd(Rounding rounding) =>
        rounding == Rounding.Inward ? Rounding.Downward : rounding;

    private static bool IsClose(double? one, double? other) =>
        one is null || other is null || Step.AreSame(one.Value, other.Value);
}
