using CareSheets.Collection;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Care ranges of an entry to rows that a template prints.</summary>
public sealed class RangeRowMaker(Site site)
{
    private readonly EvidenceText _evidence = new(site);
    private readonly EstimateRows _estimates = new(site);

    /// <summary>In the schema's order; ranges that matter to everyone are there even when unknown.</summary>
    public IReadOnlyList<RangeRow> Make(Entry entry) =>
    [
        .. from declared in site.Collection.Ranges
           where declared.IsAlwaysShown || entry.Range(declared.Field) is not null
           select Row(entry, declared),
    ];

    /// <summary>
    /// The three rows that a card has room for, and that a page shows at a glance. Salt comes before hardness
    /// of a fish that needs it, for that dies of fresh water sooner than of soft.
    /// </summary>
    public IReadOnlyList<RangeRow> MakeBrief(Entry entry)
    {
        var fields = new[] { "temperature", "ph", "salinity", "hardness" };
        var shown = fields.Where(f => f != "salinity" || FreshWater.NeedsSalt(entry)).Take(3);
        return [.. shown.Select(field => Make(entry, field)).OfType<RangeRow>()];
    }

    /// <summary>One row, also of a range that is not stated; nothing where the schema declares no such range.</summary>
    public RangeRow? Make(Entry entry, string field) =>
        site.Collection.Ranges.FirstOrDefault(r => r.Field == field) is { } declared
            ? Row(entry, declared)
            : null;

    public static string LabelOf(CareRangeDeclaration declared, Words words) =>
        words.Or($"range.{declared.Field}", declared.Label);

    private RangeRow Row(Entry entry, CareRangeDeclaration declared) => site.RangeRows.GetOrAdd(
        (entry.Name, declared.Field, site.Units),
        _ => Made(entry, entry.Range(declared.Field) ?? new CareRange(declared, [])));

    private RangeRow Made(Entry entry, CareRange range)
    {
        var label = LabelOf(range.Declaration, site.Words);
        var keep = range.Of(RangeKind.Keep);
        var others = range.Kinds.Where(k => k.Kind != RangeKind.Keep).Select(k => Line(entry, k)).ToList();
        if (keep is null && range.Kinds.All(k => k.Kind == RangeKind.Wild) &&
            EstimateMaker.Make(site.Relatives, entry, range.Declaration.Field) is { } estimate)
            return _estimates.Row(label, estimate, others);
        if (keep is null)
            return new RangeRow(label, site.Words["sentence.unknown"], "", null, others, "");
        var shown = site.Quantities.Show(keep.Range.Value, Rounding.Inward);
        var said = site.Words.Say("sentence.range", ("label", label), ("range", shown.Both));
        return new RangeRow(
            label, shown.First, shown.Second,
            RangeBarMaker.Make(range, said, site.Quantities), others, _evidence.Of(keep.Evidence))
        {
            Brief = keep.Evidence.IsOwn ? "" : site.Words["estimate.brief_stated"],
        };
    }

    private KindLine Line(Entry entry, KindedRange range)
    {
        var shown = site.Quantities.Show(range.Range.Value, Rounding.Inward);
        var evidence = range.Evidence == entry.Evidence ? "" : _evidence.Of(range.Evidence);
        return new KindLine(site.Words[$"kind.{range.Kind}"], shown.First, shown.Second, evidence)
        {
            IsOnlySurvived = range.Kind == RangeKind.Survives,
        };
    }
}
