using System.Globalization;

namespace CareSheets.Quantities.Notation;

/// <summary>A computed number in the digits readers see.</summary>
internal static class Figure
{
    /// <summary>At most ten decimals, none that are zero, a point, and a true minus sign.</summary>
    public static string Write(double value)
    {
        var digits = value.ToString("0.##########", CultureInfo.InvariantCulture);
        return digits == "-0" ? "0" : digits.Replace('-', Sign.Minus);
    }
}
