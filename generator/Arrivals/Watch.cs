namespace CareSheets.Arrivals;

/// <summary>A batch under watch.</summary>
/// <param name="End">First day on which it could be sold, were it alone in its water.</param>
public sealed record Watch(Arrival Arrival, Batch Batch, DateOnly End);
