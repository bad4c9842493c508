namespace CareSheets.Tankmates.Tanks;

/// <summary>Why a species does not simply fit: the limits it has and the figure that it would get.</summary>
/// <param name="Figure">In the canonical unit of the limits, or nothing where it is unknown.</param>
public sealed record FitReason(Fit Weight, Limits Limits, double? Figure)
{
    public LimitState State => Limits.StateOf(Figure);
}
