namespace CareSheets.Statistics;

/// <summary>
/// Forecasts within one group of exchangeable normal values whose mean and scatter are both
/// estimated from the group.
/// </summary>
public static class SingleGroup
{
    /// <summary>
    /// The next value after those given: Student with n - 1 degrees of freedom about their mean,
    /// with scale s √(1 + 1/n). Null below two values or when all are alike. Student 1908,
    /// Biometrika 6:1-25, for the distribution.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is NaN or infinite.</exception>
    public static Student? NextValue(ReadOnlySpan<double> values) =>
        Forecast(Checked(values));

    /// <summary>
    /// Each value as the others foretell it, in the order given; its T is the externally
    /// studentised residual. Linear in n. Null below three values or where the others are all
    /// alike. Belsley, Kuh and Welsch 1980, Regression Diagnostics.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is NaN or infinite.</exception>
    public static IReadOnlyList<Student?> WithoutOwnValue(ReadOnlySpan<double> values)
    {
        Checked(values);
        var before = new Moments[values.Length];
        var running = default(Moments);
        for (var k = 0; k < values.Length; k++)
        {
            before[k] = running;
            running = running.And(values[k]);
        }

        var forecasts = new Student?[values.Length];
        running = default;
        for (var k = values.Length - 1; k >= 0; k--)
        {
            forecasts[k] = Forecast(before[k].And(running));
            running = running.And(values[k]);
        }

        return forecasts;
    }

    private static Moments Checked(ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            Require.Finite(value);
        }

        return Moments.Of(values);
    }

    private static Student? Forecast(Moments others)
    {
        if (others.Count < 2 || others.SumOfSquares == 0)
        {
            return null;
        }

        var scale = Math.Sqrt(others.Variance * (1 + 1.0 / others.Count));
        return Student.From(others.Mean, scale, others.Count - 1);
    }
}
