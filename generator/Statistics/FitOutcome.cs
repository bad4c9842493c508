using System.Diagnostics.CodeAnalysis;

namespace CareSheets.Statistics;

/// <summary>Either a fit or the reason for having none.</summary>
public sealed class FitOutcome
{
    private FitOutcome(Fit? fit, FitProblem? problem)
    {
        Fit = fit;
        Problem = problem;
    }

    [MemberNotNullWhen(true, nameof(Fit))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool IsFitted => Fit is not null;

    public Fit? Fit { get; }

    public FitProblem? Problem { get; }

    internal static FitOutcome Of(Fit fit) => new(fit, null);

    internal static FitOutcome Of(FitProblem problem) => new(null, problem);
}
