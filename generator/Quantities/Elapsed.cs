using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>How long something took: a bag under way, or afloat.</summary>
/// <remarks>
/// Canonical unit: hour. Not negative (0 inclusive), no upper limit. Life spans are a
/// <see cref="Duration"/>, in years.
/// Kept as a double, never rounded; equal only when exactly so. The default is no time.
/// </remarks>
public readonly struct Elapsed : IAmount<Elapsed>
{
    private readonly double _hours;

    private Elapsed(double hours) => _hours = Dimension.Require(hours);

    public static Dimension Dimension => DimensionCatalogue.Elapsed;

    public double Canonical => _hours;

    public double InHours => _hours;

    public double InMinutes => ElapsedUnits.Minute.FromCanonical(_hours);

    public static Elapsed FromCanonical(double value) => new(value);

    public static Elapsed FromHours(double value) => new(value);

    public static Elapsed FromMinutes(double value) => new(ElapsedUnits.Minute.ToCanonical(value));

    public static Elapsed operator +(Elapsed left, Elapsed right) =>
        new(left._hours + right._hours);

    public static Elapsed operator -(Elapsed left, Elapsed right) =>
        new(left._hours - right._hours);

    public static Elapsed operator *(Elapsed left, double right) => new(left._hours * right);

    public static Elapsed operator /(Elapsed left, double right) => new(left._hours / right);

    public static bool operator ==(Elapsed left, Elapsed right) => left.Equals(right);

    public static bool operator !=(Elapsed left, Elapsed right) => !left.Equals(right);

    public static bool operator <(Elapsed left, Elapsed right) => left._hours < right._hours;

    public static bool operator >(Elapsed left, Elapsed right) => left._hours > right._hours;

    public static bool operator <=(Elapsed left, Elapsed right) => left._hours <= right._hours;

    public static bool operator >=(Elapsed left, Elapsed right) => left._hours >= right._hours;

    public bool Equals(Elapsed other) => _hours.Equals(other._hours);

    public override bool Equals(object? obj) => obj is Elapsed other && Equals(other);

    public override int GetHashCode() => _hours.GetHashCode();

    public int CompareTo(Elapsed other) => _hours.CompareTo(other._hours);

    public override string ToString() => Dimension.Describe(_hours);
}
