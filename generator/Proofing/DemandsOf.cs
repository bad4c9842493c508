using CareSheets.Quantities;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing;

/// <summary>A reason why a species asks for more, with the fields on which it stands.</summary>
public sealed record FoundDemand(Demand Demand, EntryFields Fields);

/// <summary>
/// What a species asks of its keeper: each reason that holds of its entry, beside the water of the shop's tap.
/// None does not make it easy: only what is counted is counted.
/// </summary>
public static class DemandsOf
{
    public static IReadOnlyList<FoundDemand> Entry(Entry entry, IReadOnlyList<Demand> demands, Store store)
    {
        var fields = entry.Fields.With(Tap(store, entry));
        return [.. demands.Where(d => d.When.Judge(fields) == Truth.Yes).OrderBy(d => d.Kind)
            .Select(d => new FoundDemand(d, fields))];
    }

    private static IEnumerable<KeyValuePair<string, FieldValue>> Tap(Store store, Entry entry) =>
        from figure in store.Tap?.Figures ?? new Dictionary<string, StatedRange>()
        select new KeyValuePair<string, FieldValue>(
            $"tap.{figure.Key}", new FieldFigure(new(figure.Value, entry.Span)));
}
