using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>Between which figures a species fits, and between which it nearly fits.</summary>
/// <param name="Field">A side of the tank (length, width, height), volume, or a care range.</param>
/// <param name="Fits">Nothing where nobody knows.</param>
/// <param name="Nearly">Contains <paramref name="Fits"/>.</param>
public sealed record Limits(
    string Field, Dimension Dimension, LimitBasis Basis, Stretch? Fits = null, Stretch? Nearly = null)
{
    /// <summary>What it means that a customer leaves the figure out; asking for it is the rule.</summary>
    public Fit WhenNotGiven { get; init; } = Fit.NotKnown;

    public LimitState StateOf(double? figure)
    {
        if (Fits is not { } fits || Nearly is not { } nearly)
            return LimitState.Within;
        return figure is not { } known ? LimitState.NotGiven
            : fits.Contains(known) ? LimitState.Within
            : nearly.Contains(known) ? LimitState.Near : LimitState.Beyond;
    }

    public Fit WeightOf(LimitState state) => (Basis, state) switch
    {
        (LimitBasis.Nobody, _) => Fit.NotKnown,
        (_, LimitState.NotGiven) => WhenNotGiven,
        (_, LimitState.Beyond) => Fit.DoesNotFit,
        (LimitBasis.Relatives, _) => Fit.NotKnown,
        (_, LimitState.Near) => Fit.Nearly,
        _ => Fit.Fits,
    };

    /// <param name="figure">In the canonical unit, or nothing where the customer did not say.</param>
    public Fit Judge(double? figure) => WeightOf(StateOf(figure));
}
