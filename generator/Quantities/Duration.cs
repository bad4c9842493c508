using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>How long an animal lives.</summary>
/// <remarks>
/// Canonical unit: year of 365.25 days. Not negative (0 inclusive), no upper limit.
/// Kept as a double, never rounded; equal only when exactly so. Ordered from short to long; the
/// default is no time.
/// </remarks>
public readonly struct Duration : IAmount<Duration>
{
    private readonly double _years;

    private Duration(double years) => _years = Dimension.Require(years);

    public static Dimension Dimension => DimensionCatalogue.Duration;

    public double Canonical => _years;

    public double InYears => _years;

    public double InMonths => DurationUnits.Month.FromCanonical(_years);

    public double InDays => DurationUnits.Day.FromCanonical(_years);

    public static Duration FromCanonical(double value) => new(value);

    public static Duration FromYears(double value) => new(value);

    public static Duration FromMonths(double value) =>
        new(DurationUnits.Month.ToCanonical(value));

    public static Duration FromDays(double value) => new(DurationUnits.Day.ToCanonical(value));

    public static Duration operator +(Duration left, Duration right) =>
        new(left._years + right._years);

    public static Duration operator -(Duration left, Duration right) =>
        new(left._years - right._years);

    public static Duration operator *(Duration left, double right) => new(left._years * right);

    public static Duration operator /(Duration left, double right) => new(left._years / right);

    public static bool operator ==(Duration left, Duration right) => left.Equals(right);

    public static bool operator !=(Duration left, Duration right) => !left.Equals(right);

    public static bool operator <(Duration left, Duration right) => left._years < right._years;

    public static bool operator >(Duration left, Duration right) => left._years > right._years;

    public static bool operator <=(Duration left, Duration right) => left._years <= right._years;

    public static bool operator >=(Duration left, Duration right) => left._years >= right._years;

    public bool Equals(Duration other) => _years.Equals(other._years);

    public override bool Equals(object? obj) => obj is Duration other && Equals(other);

    public override int GetHashCode() => _years.GetHashCode();

    public int CompareTo(Duration other) => _years.CompareTo(other._years);

    public override string ToString() => Dimension.Describe(_years);
}
