using CareSheets.Proofing.Advice;
using CareSheets.Species;

namespace CareSheets.Pages.Law;

/// <summary>Puts into lines what a home sheet tells beside the figures, and names what the sheet covers.</summary>
internal sealed class AdviceMaker(Site site)
{
    public IEnumerable<Fact> Facts(Entry entry)
    {
        var advice = entry.Advice.Or(site.Collection.Store.Advice);
        (string Label, string? Text)[] all =
            [("fact.routine", advice.Routine), ("fact.settling_in", advice.SettlingIn), ("fact.costs", advice.Costs)];
        return all.Where(a => a.Text is not null).Select(a => new Fact(site.Words[a.Label], a.Text!));
    }

    public string Covers(Entry entry) => site.Words.Say("advice.covers", ("topics", string.Join(
        site.Words["sentence.list_separator"],
        AdviceCoverage.Covered(entry, site.Collection.Store).Select(t => site.Words[$"topic.{t}"]))));
}
