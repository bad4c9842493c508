namespace CareSheets.Statistics;

/// <summary>
/// One damped Newton step uphill over the logarithms of the variances above 0.
/// </summary>
/// <remarks>
/// Slopes are exact; curvatures are their forward differences. Where the surface is not curved
/// downward, or the step overshoots, each diagonal term is raised in proportion to its own size
/// until it helps (Marquardt 1963, J. SIAM 11:431-441): a rank with few groups curves the
/// surface a thousand times less than the leaves do and needs its own measure.
/// </remarks>
internal static class NewtonStep
{
    private const double Nudge = 1e-4;
    private const double LongestStep = 3;
    private const double Settled = 1e-9;

    // Below this the gain in height drowns in rounding while the slope is still exact.
    private const double TrustedStep = 1e-4;
    private const double LeastDamping = 1e-3;
    private const int MostDampings = 25;

    /// <summary>Null when no step of any use is left.</summary>
    public static VariancePoint? From(VariancePoint point, VarianceObjective objective)
    {
        var free = point.Variances.Index().Where(v => v.Item > 0).Select(v => v.Index).ToArray();
        var curvature = Curvature(point, objective, free);
        var slopes = free.Select(point.LogSlope).ToArray();
        var damping = 0.0;
        for (var attempt = 0; attempt < MostDampings; attempt++)
        {
            if (PositiveSystem.Solve(Damped(curvature, damping), slopes) is { } step)
            {
                var length = step.Max(Math.Abs);
                if (damping == 0 && length < Settled)
                {
                    return null;
                }

                var next = objective.At(Moved(point, free, step));
                if (next.Value > point.Value || (damping == 0 && length < TrustedStep))
                {
                    return next;
                }
            }

            damping = damping == 0 ? LeastDamping : 4 * damping;
        }

        return null;
    }

    /// <summary>Minus the second derivatives by the logarithms of the free variances.</summary>
    private static double[,] Curvature(
        VariancePoint point, VarianceObjective objective, int[] free)
    {
        var slopes = new double[free.Length, free.Length];
        for (var column = 0; column < free.Length; column++)
        {
            var rank = free[column];
            var near = objective.At(point.With(rank, point.Variances[rank] * Math.Exp(Nudge)));
            for (var row = 0; row < free.Length; row++)
            {
                var change = near.LogSlope(free[row]) - point.LogSlope(free[row]);
                slopes[row, column] = -change / Nudge;
            }
        }

        return Symmetric(slopes);
    }

    private static double[,] Symmetric(double[,] a)
    {
        var mean = (double[,])a.Clone();
        for (var row = 0; row < a.GetLength(0); row++)
        {
            for (var column = 0; column < a.GetLength(0); column++)
            {
                mean[row, column] = 0.5 * (a[row, column] + a[column, row]);
            }
        }

        return mean;
    }

    private static double[,] Damped(double[,] curvature, double damping)
    {
        var damped = (double[,])curvature.Clone();
        for (var row = 0; row < damped.GetLength(0); row++)
        {
            damped[row, row] += damping * Math.Abs(damped[row, row]);
        }

        return damped;
    }

    private static double[] Moved(VariancePoint point, int[] free, double[] step)
    {
        var moved = (double[])point.Variances.Clone();
        for (var k = 0; k < free.Length; k++)
        {
            moved[free[k]] *= Math.Exp(Math.Clamp(step[k], -LongestStep, LongestStep));
        }

        return moved;
    }
}
