using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Pages.Law;

/// <summary>Puts into sentences what the lists of law say of an entry.</summary>
internal sealed class LawMaker(Site site)
{
    private readonly RegulationFinder _finder = new(site.Law.Lists, site.Collection.Store.Jurisdiction);

    private Words Words => site.Words;

    /// <summary>For the page: with what each list does, and with the lists of other places.</summary>
    public LawLines Page(Entry entry)
    {
        var status = _finder.Of(entry);
        return new LawLines(
            [.. Here(status, o => Told(o, "law.listed"))],
            [.. status.Elsewhere.Select(o => Told(o, "law.elsewhere"))], Words["law.confirm"]);
    }

    /// <summary>For paper: each list in a few words.</summary>
    public LawLines Paper(Entry entry) =>
        new([.. Here(_finder.Of(entry), o => Told(o, "law.listed_short"))], [], Words["law.confirm_short"]);

    /// <summary>The strictest list that names it, for the card; nothing where none does.</summary>
    public string? Card(Entry entry) =>
        _finder.Of(entry).Strictest is { } strictest ? Told(strictest, "law.card") : null;

    /// <summary>The same for staff, who ask the authority themselves; of a name that may have no entry.</summary>
    public string? Staff(AskedTaxon taxon) => _finder.Of(taxon).Strictest is { } strictest
        ? $"{Told(strictest, "law.listed_short")} {Words["law.confirm_short"]}"
        : null;

    private IEnumerable<string> Here(RegulationStatus status, Func<ListOutcome, string> listed)
    {
        foreach (var outcome in status.Of(OutcomeKind.Listed))
            yield return listed(outcome);
        foreach (var same in status.Of(OutcomeKind.NotChecked).GroupBy(o => o.Reason))
            yield return Words.Say($"law.{same.Key}", ("lists", Lists(same)));
        foreach (var outcome in status.Of(OutcomeKind.Excepted))
            yield return Words.Say("law.excepted", ("list", Dated(outcome.List)), ("taxon", outcome.Rule!.Name.Value));
        var silent = status.Of(OutcomeKind.NotFound).ToList();
        if (silent.Count > 0)
            yield return Words.Say("law.not_found", ("lists", Lists(silent)));
        if (status.Here.Count == 0)
            yield return Words["law.none"];
    }

    private string Told(ListOutcome outcome, string sentence)
    {
        var (list, rule) = (outcome.List, outcome.Rule!);
        (string, string)[] all =
        [
            ("effect", Words[$"law_effect.{rule.Effect}"]), ("list", list.Title.Value), ("clause", rule.Clause),
            ("taxon", rule.Name.Value), ("state", State(outcome)), ("territory", list.Territory),
            ("about", list.About ?? ""),
        ];
        var template = Words[sentence];
        return Words.Say(sentence, [.. all.Where(v => template.Contains($"{{{v.Item1}}}", StringComparison.Ordinal))])
            .Trim();
    }

    private string Lists(IEnumerable<ListOutcome> outcomes) =>
        string.Join(Words["law.separator"], outcomes.Select(o => Dated(o.List)));

    private string Dated(RegulationList list)
    {
        var key = list.Extent == ListExtent.Part ? "law.part" : "law.dated";
        return Words.Say(key, ("list", list.Title.Value), ("state", State(list)));
    }

    /// <summary>What a rule says of itself goes before the day of the list, which may be older than the rule.</summary>
    private string State(ListOutcome outcome) => outcome.Rule?.Note is { } note
        ? Words.Say("law.noted", ("note", note), ("state", State(outcome.List)))
        : State(outcome.List);

    private string State(RegulationList list) => list.Checked is { } day
        ? Words.Say("law.as_of", ("day", DateText.Of(day.Value, Words)))
        : Words["law.undated"];
}
