using CareSheets.Diagnostics;
using CareSheets.Quantities;

namespace CareSheets.Arrivals;

/// <summary>
/// A bag whose water was measured before its fish were let out. It stands for all bags of the
/// arrival whose fish go into the same system, or into the same tank.
/// </summary>
/// <param name="System">Nothing where it is for one tank.</param>
/// <param name="Tank">Nothing where it is for a system.</param>
/// <param name="Hours">Hours that it was closed, where that differs from the arrival's own.</param>
public sealed record MeasuredBag(
    Sourced<string>? System,
    Sourced<string>? Tank,
    double? Hours,
    StatedRange? Temperature,
    StatedRange? Acidity,
    StatedRange? CarbonateHardness,
    StatedRange? Ammonia)
{
    public bool IsFor(Batch batch) => Tank is { } tank
        ? tank.Value == batch.Tank
        : System is { } system && system.Value == batch.System?.Value;
}
