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
        others = others.Concat(estimates).ToList();
        return [.. others.Prepend(new Fact(
            site.Words[others.Any() ? "fact.all_other_figures" : "fact.all_figures"], text.Of(entry.Evidence)))];
    }
}
