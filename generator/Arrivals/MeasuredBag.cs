using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Arrivals;

/// <summary>
/// A bag whose water was measured before its fish were let out. It stands for all bags of the
/// arrival whose fish go into the same system.
/// </summary>
/// <param name="Hours">Hours that it was closed, where that differs from the arrival's own.</param>
public sealed record MeasuredBag(
    Sourced<string> System,
    double? Hours,
    StatedRange? Temperature,
    StatedRange? Acidity,
    StatedRange? CarbonateHardness,
    StatedRange? Ammonia);
