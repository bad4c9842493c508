using CareSheets.Species;
using CareSheets.Tankmates.Aspects;

namespace CareSheets.Tankmates;

/// <summary>Judges two species by every aspect.</summary>
public sealed class PairJudge(IReadOnlyList<CareRangeDeclaration> ranges)
{
    public IReadOnlyList<IAspect> Aspects { get; } = AspectCatalogue.For(ranges);

    public Pairing Judge(Tankmate one, Tankmate other)
    {
        var (first, second) = InOrder(one, other);
        var reasons = Aspects.SelectMany(aspect => Reasons(aspect, first, second));
        return new Pairing(first, second, Sorted(reasons));
    }

    /// <summary>The weightiest first, else in the order of the aspects.</summary>
    internal static IReadOnlyList<PairReason> Sorted(IEnumerable<PairReason> reasons) =>
        [.. reasons.OrderByDescending(r => r.Reason.Weight)];

    internal static (Tankmate First, Tankmate Second) InOrder(Tankmate one, Tankmate other) =>
        string.CompareOrdinal(one.Name, other.Name) <= 0 ? (one, other) : (other, one);

    private static IEnumerable<PairReason> Reasons(IAspect aspect, Tankmate first, Tankmate second)
    {
        foreach (var reason in aspect.Judge(first, second))
            yield return new PairReason(aspect, reason, first, second);
        if (aspect.IsMutual)
            yield break;
        foreach (var reason in aspect.Judge(second, first).Where(r => !IsSaidOnce(r.Kind)))
            yield return new PairReason(aspect, reason, second, first);
    }

    /// <summary>Some reasons of an aspect that looks both ways are mutual all the same.</summary>
    internal static bool IsSaidOnce(ReasonKind kind) =>
        kind is ReasonKind.RivalsForPlace or ReasonKind.MayCross;
}
