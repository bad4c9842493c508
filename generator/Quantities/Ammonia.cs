using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>Ammonia in the water, un-ionised or with its ion, counted by the nitrogen in it.</summary>
/// <remarks>
/// Canonical unit: mg/L as nitrogen. Not negative (0 inclusive), no upper limit. The same ammonia is
/// 1.216 times as many milligrams of NH₃ and 1.288 times as many of NH₄, so no figure of it is
/// read without its basis. Kept as a double, never rounded; equal only when exactly so. The default
/// is none.
/// </remarks>
public readonly struct Ammonia : IAmount<Ammonia>
{
    private readonly double _nitrogen;

    private Ammonia(double nitrogen) => _nitrogen = Dimension.Require(nitrogen);

    public static Dimension Dimension => DimensionCatalogue.Ammonia;

    public double Canonical => _nitrogen;

    public double InMilligramsOfNitrogen => _nitrogen;

    public double InMilligramsOfAmmonia =>
        AmmoniaUnits.MilligramOfAmmonia.FromCanonical(_nitrogen);

    public static Ammonia FromCanonical(double value) => new(value);

    public static Ammonia FromMilligramsOfNitrogen(double value) => new(value);

    public static Ammonia FromMilligramsOfAmmonia(double value) =>
        new(AmmoniaUnits.MilligramOfAmmonia.ToCanonical(value));

    public static Ammonia operator +(Ammonia left, Ammonia right) =>
        new(left._nitrogen + right._nitrogen);

    public static Ammonia operator -(Ammonia left, Ammonia right) =>
        new(left._nitrogen - right._nitrogen);

    public static Ammonia operator *(Ammonia left, double right) => new(left._nitrogen * right);

    public static Ammonia operator /(Ammonia left, double right) => new(left._nitrogen / right);

    public static bool operator ==(Ammonia left, Ammonia right) => left.Equals(right);

    public static bool operator !=(Ammonia left, Ammonia right) => !left.Equals(right);

    public static bool operator <(Ammonia left, Ammonia right) => left._nitrogen < right._nitrogen;

    public static bool operator >(Ammonia left, Ammonia right) => left._nitrogen > right._nitrogen;

    public static bool operator <=(Ammonia left, Ammonia right) => left._nitrogen <= right._nitrogen;

    public static bool operator >=(Ammonia left, Ammonia right) => left._nitrogen >= right._nitrogen;

    public bool Equals(Ammonia other) => _nitrogen.Equals(other._nitrogen);

    public override bool Equals(object? obj) => obj is Ammonia other && Equals(other);

    public override int GetHashCode() => _nitrogen.GetHashCode();

    public int CompareTo(Ammonia other) => _nitrogen.CompareTo(other._nitrogen);

    public override string ToString() => Dimension.Describe(_nitrogen);
}
