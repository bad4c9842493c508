using System.Globalization;
using CareSheets.Quantities;

namespace CareSheets.Tests.Water;

/// <summary>Tables as they are printed: a row of figures in each line.</summary>
internal static class Printed
{
    public static IReadOnlyList<double[]> Rows(string table)
    {
        var rows = table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(line => line.Split([' ', '|', '/'], StringSplitOptions.RemoveEmptyEntries)
                .Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())
            .ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        return rows;
    }

    public static Temperature Warm(double celsius) => Temperature.FromCelsius(celsius);

    public static Acidity PH(double pH) => Acidity.FromPH(pH);

    public static CarbonateHardness KH(double degrees) => CarbonateHardness.FromGermanDegrees(degrees);

    public static Ammonia AsN(double milligrams) => Ammonia.FromMilligramsOfNitrogen(milligrams);
}
