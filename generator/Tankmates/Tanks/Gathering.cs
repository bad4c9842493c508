using CareSheets.Species;

namespace CareSheets.Tankmates.Tanks;

/// <summary>Several species in one tank: each pair, the water they share, the room they need.</summary>
/// <param name="Mates">Each once, by name: naming one twice changes nothing.</param>
/// <param name="InTank">Reasons of each against the tank; empty without one.</param>
/// <param name="Room">For all together; nothing without a tank whose volume is known.</param>
public sealed record Gathering(
    IReadOnlyList<Tankmate> Mates, IReadOnlyList<Pairing> Pairs, IReadOnlyList<SharedWater> Water,
    UnitedNeeds Needs, TankSize? Tank, IReadOnlyList<(Tankmate Mate, FitReason Reason)> InTank, RoomForAll? Room)
{
    public Verdict Verdict => Pairs.Count == 0 ? Verdict.Suits : Pairs.Max(p => p.Verdict);

    /// <summary>Nothing without a tank. No tank fits a group that has to be kept apart.</summary>
    public Fit? Fit => Tank is null ? null
        : Verdict == Verdict.KeepApart ? Tanks.Fit.DoesNotFit
        : Room is { } room && room.Fit > FitOfEach ? room.Fit : FitOfEach;

    /// <summary>The worst of each alone.</summary>
    public Fit FitOfEach => TankFit.Worst(InTank.Select(r => r.Reason));

    /// <summary>The pairs of which one has to be left out before anything else is decided.</summary>
    public IEnumerable<Pairing> Apart => Pairs.Where(p => p.Verdict == Verdict.KeepApart);

    /// <summary>Fish in all, in the smallest group of each.</summary>
    public int Count => Mates.Sum(m => m.Group);

    /// <param name="mates">One at least; order and repetition do not matter.</param>
    /// <param name="ranges">The care ranges of the schema.</param>
    /// <param name="tank">Nothing where the question is only who gets on with whom.</param>
    public static Gathering Of(
        IEnumerable<Tankmate> mates, IReadOnlyList<CareRangeDeclaration> ranges, TankSize? tank)
    {
        IReadOnlyList<Tankmate> each =
            [.. mates.DistinctBy(m => m.Name).OrderBy(m => m.Name, StringComparer.Ordinal)];
        var judge = new PairJudge(ranges);
        return new Gathering(
            each,
            [.. each.SelectMany((one, i) => each.Skip(i + 1).Select(other => judge.Judge(one, other)))],
            [.. ranges.Select(range => SharedWater.Of(range, each))],
            UnitedNeeds.Of(each),
            tank,
            tank is null ? [] : [.. each.SelectMany(m => TankFit.InTank(m, tank).Select(r => (m, r)))],
            tank?.Volume is { } volume ? RoomForAll.Of(each, volume.InLitres) : null);
    }
}
