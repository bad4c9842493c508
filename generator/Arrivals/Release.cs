namespace CareSheets.Arrivals;

/// <summary>First day on which a batch may be sold.</summary>
/// <param name="Last">The batch in the same water that it waits for; nothing when it waits for itself alone.</param>
public sealed record Release(DateOnly Day, Watch? Last);
