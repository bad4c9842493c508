using CareSheets.Proofing;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>The answer to "How do we know?": which figures rest on what.</summary>
internal sealed class EvidenceFacts(Site site)
{
    public IReadOnlyList<Fact> Make(Entry entry)
    {
        var text = new EvidenceText(site);
        IEnumerable<Fact> others =
            from range in entry.Ranges
            from kind in range.Kinds
            where kind.Evidence != entry.Evidence
            let label = RangeRowMaker.LabelOf(range.Declaration, site.Words)
            select new Fact(
                site.Words.Say("sentence.figure", ("label", label), ("kind", site.Words[$"kind.{kind.Kind}"])),
                text.Of(kind.Evidence));
        var estimates = new RangeRowMaker(site).Make(entry).Where(row => row.IsEstimated)
            .Select(row => new Fact(row.Label, site.Words[$"evidence.{EvidenceKind.FromRelatives}"]));
        if (entry.Activity is { } activity && activity.Evidence != entry.Evidence)
            estimates = estimates.Append(new Fact(site.Words["fact.active"], text.Of(activity.Evidence)));
        others = others.Concat(estimates).Concat(Parts(entry, text)).ToList();
        return [.. others.Prepend(new Fact(
            site.Words[others.Any() ? "fact.all_other_figures" : "fact.all_figures"], text.Of(entry.Evidence)))];
    }

    /// <summary>Works that the entry cites and those behind the hazards that it inherits, each once.</summary>
    public IEnumerable<string> Works(Entry entry) => entry.References.Select(r => r.Value)
        .Concat(Inherited(entry).Where(e => e.Kind == EvidenceKind.Published).Select(e => e.Key)).Distinct();

    /// <summary>What the hazards that it inherits rest on, for the page, which has room for it.</summary>
    public IEnumerable<Fact> Cautions(Entry entry)
    {
        var told = Inherited(entry).Select(new EvidenceText(site).Of).Distinct().ToList();
        if (told.Count > 0)
            yield return new Fact(
                site.Words["fact.inherited_cautions"], string.Join(site.Words["sentence.list_separator"], told));
    }

    private IEnumerable<Evidence> Inherited(Entry entry) =>
        CautionsOf.Inherited(entry, site.Collection.Practice.Hazards).Select(h => h.Evidence);

    private IEnumerable<Fact> Parts(Entry entry, EvidenceText text)
    {
        (string Word, Evidence? Own)[] parts =
        [
            ("fact.adult_evidence", entry.Adult.Evidence), ("fact.tank_evidence", entry.Tank.Evidence),
            ("fact.company_evidence", entry.Company.Evidence),
        ];
        return parts.Where(p => p.Own is not null).Select(p => new Fact(site.Words[p.Word], text.Of(p.Own!)));
    }
}
