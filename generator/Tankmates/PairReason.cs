using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates;

/// <summary>A reason and whom it is about: One gives it, Other bears it. A mutual one holds both ways.</summary>
public sealed record PairReason(IAspect Aspect, Reason Reason, Tankmate One, Tankmate Other)
{
    public IEnumerable<Detail> OfOne => Aspect.Details(One);

    public IEnumerable<Detail> OfOther => Aspect.Details(Other);
}
