using CareSheets.Quantities;

namespace CareSheets.Tankmates.Tanks;

/// <summary>Between which figures a species fits, and between which it nearly fits.</summary>
/// <param name="Field">A side of the tank (length, width, height), volume, or a care range.</param>
/// <param name="Fits">Nothing where the entry does not say.</param>
/// <param name="Nearly">Contains <paramref name="Fits"/>.</param>
public sealed record Limits(string Field, Dimension Dimension, Stretch? Fits, Stretch? Nearly)
{
    /// <param name="figure">In the canonical unit, or nothing where the customer did not say.</param>
    public Fit Judge(double? figure)
    {
        if (figure is not { } known || Fits is not { } fits || Nearly is not { } nearly)
            return Fit.Nearly;
        return fits.Contains(known) ? Fit.Fits : nearly.Contains(known) ? Fit.Nearly : Fit.DoesNotFit;
    }
}
