using CareSheets.Proofing;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>The answer to "How do we know?": which figures rest on what.</summary>
internal sealed class EvidenceFacts(Site site)
{
    private readonly EvidenceText _text = new(site);

    /// <summary>Each figure that rests on something else than the rest, then the rest.</summary>
    public IReadOnlyList<Fact> Make(Entry entry)
    {
        IEnumerable<Fact> ranges =
            from range in entry.Ranges
            from kind in range.Kinds
            where kind.Evidence != entry.Evidence
            select new Fact(Figure(range, kind.Kind), _text.Of(kind.Evidence));
        return WithRest(entry, [.. ranges, .. Others(entry)]);
    }

    /// <summary>
    /// The same for paper, with each source once. What is only survived is not there, for paper does not tell it.
    /// </summary>
    public string Line(Entry entry)
    {
        var rest = _text.Of(entry.Evidence);
        var figures = entry.Ranges.SelectMany(Brief).Concat(Others(entry)).Where(f => f.Value != rest)
            .GroupBy(f => f.Value)
            .Select(g => new Fact(
                string.Join(site.Words["sentence.evidence_separator"], g.Select(f => f.Label).Distinct()), g.Key));
        return string.Join(' ', WithRest(entry, [.. figures]).Select(f =>
            site.Words.Say("sentence.evidence_line", ("figures", f.Label), ("source", f.Value))));
    }

    private IReadOnlyList<Fact> WithRest(Entry entry, IReadOnlyList<Fact> figures) =>
    [
        .. figures, new Fact(
            site.Words[figures.Count > 0 ? "fact.all_other_figures" : "fact.all_figures"], _text.Of(entry.Evidence)),
    ];

    /// <summary>By its label alone where all its kinds rest on the same.</summary>
    private IEnumerable<Fact> Brief(CareRange range)
    {
        List<Fact> kinds =
        [
            .. range.Kinds.Where(k => k.Kind != RangeKind.Survives)
                .Select(k => new Fact(Figure(range, k.Kind), _text.Of(k.Evidence))),
        ];
        return kinds.Select(k => k.Value).Distinct().Count() == 1
            ? [kinds[0] with { Label = RangeRowMaker.LabelOf(range.Declaration, site.Words) }]
            : kinds;
    }

    private string Figure(CareRange range, RangeKind kind) => site.Words.Say("sentence.figure",
        ("label", RangeRowMaker.LabelOf(range.Declaration, site.Words)), ("kind", site.Words[$"kind.{kind}"]));

    /// <summary>Ranges that relatives are asked for, and what is no range.</summary>
    private IEnumerable<Fact> Others(Entry entry)
    {
        foreach (var row in new RangeRowMaker(site).Make(entry).Where(row => row.IsEstimated))
            yield return new Fact(row.Label, site.Words[$"evidence.{EvidenceKind.FromRelatives}"]);
        if (entry.Activity is { } activity && activity.Evidence != entry.Evidence)
            yield return new Fact(site.Words["fact.active"], _text.Of(activity.Evidence));
        (string Word, Evidence? Own)[] parts =
        [
            ("fact.adult_evidence", entry.Adult.Evidence), ("fact.tank_evidence", entry.Tank.Evidence),
            ("fact.company_evidence", entry.Company.Evidence),
        ];
        foreach (var (word, own) in parts.Where(p => p.Own is not null))
            yield return new Fact(site.Words[word], _text.Of(own!));
    }

    /// <summary>Works that the entry cites and those behind the hazards that it inherits, each once.</summary>
    public IEnumerable<string> Works(Entry entry) => entry.References.Select(r => r.Value)
        .Concat(Inherited(entry).Where(e => e.Kind == EvidenceKind.Published).Select(e => e.Key)).Distinct();

    /// <summary>What the hazards that it inherits rest on, for the page, which has room for it.</summary>
    public IEnumerable<Fact> Cautions(Entry entry)
    {
        var told = Inherited(entry).Select(_text.Of).Distinct().ToList();
        if (told.Count > 0)
            yield return new Fact(
                site.Words["fact.inherited_cautions"], string.Join(site.Words["sentence.list_separator"], told));
    }

    private IEnumerable<Evidence> Inherited(Entry entry) =>
        CautionsOf.Inherited(entry, site.Collection.Practice.Hazards).Select(h => h.Evidence);
}
