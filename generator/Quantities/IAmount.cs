using System.Numerics;

namespace CareSheets.Quantities;

/// <summary>
/// A quantity with a true zero: amounts add and scale, unlike places on a scale.
/// </summary>
/// <remarks>
/// Amounts that cannot be negative throw when a subtraction would make them so.
/// </remarks>
/// <typeparam name="TSelf">The amount itself.</typeparam>
public interface IAmount<TSelf>
    : IQuantity<TSelf>,
      IAdditionOperators<TSelf, TSelf, TSelf>,
      ISubtractionOperators<TSelf, TSelf, TSelf>,
      IMultiplyOperators<TSelf, double, TSelf>,
      IDivisionOperators<TSelf, double, TSelf>
    where TSelf : struct, IAmount<TSelf>;
