using System.Runtime.CompilerServices;

namespace CareSheets.Statistics;

/// <summary>The door of the room: no number that is not a number passes it.</summary>
internal static class Require
{
    public static double Finite(
        double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Not a finite number.");

    public static double Positive(
        double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Not above 0.");

    /// <summary>A probability strictly between 0 and 1.</summary>
    public static double Share(
        double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value is > 0 and < 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Not between 0 and 1.");

    /// <summary>A probability from 0 to 1, both ends allowed.</summary>
    public static double Probability(
        double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value is >= 0 and <= 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Not from 0 to 1.");
}
