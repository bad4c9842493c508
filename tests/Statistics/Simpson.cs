namespace CareSheets.Tests.Statistics;

/// <summary>Composite Simpson's rule (Abramowitz and Stegun 1964, 25.4.6).</summary>
internal static class Simpson
{
    public static double Integrate(
        Func<double, double> function, double from, double to, int steps)
    {
        var width = (to - from) / steps;
        var sum = function(from) + function(to);
        for (var k = 1; k < steps; k++)
        {
            sum += (k % 2 == 1 ? 4 : 2) * function(from + k * width);
        }

        return sum * width / 3;
    }
}
