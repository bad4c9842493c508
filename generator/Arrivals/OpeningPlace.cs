namespace CareSheets.Arrivals;

/// <summary>A batch in the order in which bags are opened, with what puts it there.</summary>
/// <param name="Loading">Fish in the bag's water, g/L, estimated from their size; nothing when unknown.</param>
/// <param name="Hours">How long the bag was closed.</param>
/// <param name="Difference">How far its water lies from the middle of what the species is kept at, K.</param>
/// <param name="Urgency">The product; only its order means anything.</param>
public sealed record OpeningPlace(
    Batch Batch, double? Loading, double? Hours, double? Difference, double Urgency)
{
    /// <summary>Whether something was unknown and the worst of the arrival stood in for it.</summary>
    public bool IsAssumed => Loading is null || Hours is null || Difference is null;
}
