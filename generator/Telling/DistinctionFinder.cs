using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Telling;

/// <summary>
/// What sets a species apart from its genus, its family and the rest of its arrival, the most
/// surprising first. A figure or word that n others state and k of them match or exceed surprises by
/// -ln((k + 1) / (n + 1)): a rank needs no belief about how the figures are spread.
/// </summary>
public sealed class DistinctionFinder(SpeciesCollection collection)
{
    /// <summary>Among fewer others nobody stands out.</summary>
    public const int FewestOthers = 3;

    /// <summary>At most this share of the others, itself included, may go as far: one in four.</summary>
    private static readonly double LeastSurprise = Math.Log(4);

    /// <param name="entry">The species that is presented.</param>
    /// <param name="arrival">The species of its arrival, itself among them or not.</param>
    /// <param name="most">How many are wanted; each is about something else.</param>
    public IReadOnlyList<Distinction> Find(Entry entry, IReadOnlyCollection<Entry> arrival, int most)
    {
        (Circle Circle, List<Entry> Others)[] circles =
        [
            (Circle.Genus, [.. collection.Congeners(entry)]),
            (Circle.Family, [.. collection.Congeners(entry), .. collection.FamilyBeyondGenus(entry)]),
            (Circle.Arrival, [.. arrival.Where(e => e != entry)]),
        ];
        return
        [
            .. circles.SelectMany(c => Figures(entry, c.Circle, c.Others).Concat(Words(entry, c.Circle, c.Others)))
                .Where(d => d.Surprise >= LeastSurprise - 1e-9)
                .OrderByDescending(d => d.Surprise).ThenBy(d => d.Circle).ThenBy(d => Topics.PlaceOf(d.Topic))
                .DistinctBy(d => Topics.SubjectOf(d.Topic))
                .Take(most),
        ];
    }

    private static IEnumerable<Distinction> Figures(Entry entry, Circle circle, List<Entry> others)
    {
        foreach (var trait in FigureTrait.All)
        {
            if (trait.Of(entry) is not { } own)
                continue;
            List<(Entry Entry, TraitValue Value)> stated =
                [.. others.Select(e => (e, Value: trait.Of(e)!)).Where(o => o.Value is not null)];
            if (stated.Count < FewestOthers)
                continue;
            foreach (var isHigh in new[] { true, false })
            {
                var beyond = stated.Where(o => isHigh ? o.Value.Number < own.Number : o.Value.Number > own.Number)
                    .OrderBy(o => Math.Abs(o.Value.Number - own.Number)).ToList();
                if (beyond.Count > 0)
                    yield return new FigureDistinction(
                        trait.Topic, circle, stated.Count, beyond.Count, Surprise(beyond.Count, stated.Count),
                        isHigh, own, beyond[0].Entry, beyond[0].Value);
            }
        }
    }

    private static IEnumerable<Distinction> Words(Entry entry, Circle circle, List<Entry> others)
    {
        foreach (var trait in WordTrait.All)
        {
            var stated = others.Select(e => trait.Of(e).ToHashSet()).Where(w => w.Count > 0).ToList();
            if (stated.Count < FewestOthers)
                continue;
            foreach (var word in trait.Of(entry).Except(trait.Plain))
            {
                var without = stated.Count(w => !w.Contains(word));
                yield return new WordDistinction(
                    trait.Topic, circle, stated.Count, without,
                    Surprise(without, stated.Count), word, [.. trait.Of(entry)]);
            }
        }
    }

    private static double Surprise(int beyond, int others) => -Math.Log((others - beyond + 1.0) / (others + 1.0));
}
