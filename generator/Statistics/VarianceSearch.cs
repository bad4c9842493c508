namespace CareSheets.Statistics;

/// <summary>
/// Climbs from one starting point to the nearest summit of the objective.
/// </summary>
/// <remarks>
/// Zero lies infinitely far away on the logarithmic scale of the Newton steps, so without a
/// prior a group rank is set to exactly 0 when the likelihood falls as its variance grows, or
/// when it is lost in rounding, and is set free again once the others have settled if its slope
/// at 0 points upward. No step loses height but for the last digits; nothing is random.
/// </remarks>
internal sealed class VarianceSearch(VarianceObjective objective, IReadOnlyList<bool> isSilent)
{
    private const int MostSteps = 200;
    private const double SmallShare = 0.01;
    private const double NegligibleShare = 1e-9;

    // Log slopes grow with the number of values; this leaves variances right to six digits.
    private const double FlatPerValue = 1e-7;

    /// <summary>Null when no summit was reached.</summary>
    public VariancePoint? Climb(VariancePoint start)
    {
        var point = start;
        for (var step = 0; step < MostSteps; step++)
        {
            var next = DropToZero(point) ?? NewtonStep.From(point, objective)
                ?? ReleaseFromZero(point);
            if (next is null)
            {
                break;
            }

            point = next;
        }

        var flat = FlatPerValue * (1 + objective.Weight);
        return point.Slopes.Index().All(slope => Math.Abs(point.LogSlope(slope.Index)) <= flat)
            ? point
            : null;
    }

    private VariancePoint? DropToZero(VariancePoint point)
    {
        for (var rank = 0; objective.AllowsZero && rank < point.Variances.Length - 1; rank++)
        {
            var share = point.Variances[rank] / objective.TotalVariance;
            var falls = share < SmallShare && point.Slopes[rank] < 0;
            if (share == 0 || !(falls || share < NegligibleShare))
            {
                continue;
            }

            var dropped = objective.At(point.With(rank, 0));
            if (dropped.Value >= point.Value || share < NegligibleShare)
            {
                return dropped;
            }
        }

        return null;
    }

    private VariancePoint? ReleaseFromZero(VariancePoint point)
    {
        for (var rank = 0; rank < point.Variances.Length; rank++)
        {
            if (point.Variances[rank] == 0 && point.Slopes[rank] > 0 && !isSilent[rank]
                && Raise(point, rank) is { } raised)
            {
                return raised;
            }
        }

        return null;
    }

    private VariancePoint? Raise(VariancePoint point, int rank)
    {
        for (var share = SmallShare; share > NegligibleShare; share /= 10)
        {
            var raised = objective.At(point.With(rank, share * objective.TotalVariance));
            if (raised.Value > point.Value)
            {
                return raised;
            }
        }

        return null;
    }
}
