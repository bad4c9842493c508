using CareSheets.Species;

namespace CareSheets.Tankmates.Tanks;

/// <summary>Several species in one tank: each pair, the water they share, the room they need.</summary>
/// <param name="Mates">Each once, by name: naming one twice changes nothing.</param>
/// <param name="InTank">Reasons of each against the tank; empty without one.</param>
/// <param name="LacksRoomForAll">
/// The tank has room for each alone, but not for what the entries ask for one after the other. One
/// may be content with less than that sum, so this asks for care and forbids nothing.
/// </param>
public sealed record Gathering(
    IReadOnlyList<Tankmate> Mates, IReadOnlyList<Pairing> Pairs, IReadOnlyList<SharedWater> Water,
    UnitedNeeds Needs, TankSize? Tank, IReadOnlyList<(Tankmate Mate, FitReason Reason)> InTank, bool LacksRoomForAll)
{
    public Verdict Verdict => Pairs.Count == 0 ? Verdict.Suits : Pairs.Max(p => p.Verdict);

    /// <summary>Nothing without a tank.</summary>
    public Fit? Fit => Tank is null
        ? null
        : TankFit.Worst(InTank.Select(r => r.Reason)) is var worst && worst == Tanks.Fit.Fits && LacksRoomForAll
            ? Tanks.Fit.Nearly
            : worst;

    /// <summary>Fish in all, in the smallest group of each.</summary>
    public int Count => Mates.Sum(m => m.Group);

    /// <summary>In L, as each entry asks for its own group.</summary>
    public double VolumeForAll => Mates.Sum(m => m.Housing.Volume);

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
            tank is not null && each.Sum(m => m.Housing.Volume) > tank.Volume.InLitres);
    }
}
