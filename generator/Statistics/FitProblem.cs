namespace CareSheets.Statistics;

/// <summary>
/// The reason for which there is no fit, with the number of values it would take and the number
/// there was.
/// </summary>
public sealed record FitProblem(FitProblemKind Kind, int Needed, int Had);
