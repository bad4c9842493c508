using CareSheets.Diagnostics;

namespace CareSheets.Arrivals;

/// <summary>Fish of a batch found dead on one day after the bags were opened.</summary>
public sealed record Loss(Sourced<DateOnly> Date, Sourced<int> Count);
