using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Tankmates;

/// <summary>
/// All species of a collection as companions, and every pair of them judged. A pair costs a few
/// look-ups, its reasons in full are put together only for those who ask.
/// </summary>
public sealed class Acquaintances
{
    private readonly Dictionary<string, int> _places;

    /// <param name="mates">Each once.</param>
    /// <param name="ranges">The care ranges of the schema.</param>
    public Acquaintances(IEnumerable<Tankmate> mates, IReadOnlyList<CareRangeDeclaration> ranges)
    {
        Ranges = ranges;
        Mates = [.. mates.OrderBy(m => m.Name, StringComparer.Ordinal)];
        _places = Mates.Select((m, i) => (m.Name, Place: i)).ToDictionary(m => m.Name, m => m.Place);
        Tables = [.. new PairJudge(ranges).Aspects.AsParallel().AsOrdered()
            .Select(aspect => new AspectTable(aspect, Mates))];
    }

    public IReadOnlyList<CareRangeDeclaration> Ranges { get; }

    /// <summary>By name.</summary>
    public IReadOnlyList<Tankmate> Mates { get; }

    public IReadOnlyList<AspectTable> Tables { get; }

    public static Acquaintances Of(SpeciesCollection collection, AskRelatives ask) =>
        new(collection.Entries.Select(e => Tankmate.Of(e, collection, ask)), collection.Ranges);

    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public int PlaceOf(string name) => _places[name];

    /// <summary>The same as the verdict of <see cref="Pair"/>, without its reasons.</summary>
    public Verdict Judge(int one, int other)
    {
        var worst = Verdict.Suits;
        foreach (var table in Tables)
        {
            worst = Worse(worst, table.Between(one, other));
            worst = Worse(worst, table.Between(other, one));
            if (worst == Verdict.KeepApart)
                break;
        }
        return worst;
    }

    public Pairing Pair(int one, int other)
    {
        var (first, second) = one <= other ? (one, other) : (other, one);
        var reasons = Tables.SelectMany(table => Reasons(table, first, second));
        return new Pairing(Mates[first], Mates[second], PairJudge.Sorted(reasons));
    }

    /// <summary>The same as the number of reasons of <see cref="Pair"/>, without putting them together.</summary>
    public int CountReasons(int one, int other)
    {
        var (first, second) = one <= other ? (one, other) : (other, one);
        var count = 0;
        foreach (var table in Tables)
        {
            count += table.Between(first, second).Count;
            if (!table.Aspect.IsMutual)
                count += table.Between(second, first).Count(r => !PairJudge.IsSaidOnce(r.Kind));
        }
        return count;
    }

    private IEnumerable<PairReason> Reasons(AspectTable table, int first, int second)
    {
        foreach (var reason in table.Between(first, second))
            yield return new PairReason(table.Aspect, reason, Mates[first], Mates[second]);
        if (table.Aspect.IsMutual)
            yield break;
        foreach (var reason in table.Between(second, first).Where(r => !PairJudge.IsSaidOnce(r.Kind)))
            yield return new PairReason(table.Aspect, reason, Mates[second], Mates[first]);
    }

    private static Verdict Worse(Verdict worst, IReadOnlyList<Reason> reasons)
    {
        for (var i = 0; i < reasons.Count; i++) // millions of times, so without an enumerator
            worst = reasons[i].Weight > worst ? reasons[i].Weight : worst;
        return worst;
    }
}
