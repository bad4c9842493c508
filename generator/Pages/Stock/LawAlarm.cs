using CareSheets.Arrivals;
using CareSheets.Names;
using CareSheets.Pages.Law;
using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>
/// Regulated names on a docket. A line whose species nobody knows is searched for names too: a supplier's
/// words are enough to ask the authority before the bag is opened. Silence says nothing.
/// </summary>
internal sealed class LawAlarm(Site site)
{
    private readonly LawMaker _law = new(site);
    private readonly MeantFishes _meant = new(site.Collection);

    /// <summary>The strictest list that binds the shop and names the species.</summary>
    public string? Of(Entry entry) => _law.Staff(AskedTaxon.Of(entry));

    public IEnumerable<string> Of(Batch batch, Entry? entry)
    {
        if (entry is not null)
            return Of(entry) is { } listed ? [listed] : [];
        var guessed = _meant.Entries(batch).Select(e => (Name: e.ScientificName.Value.ToString(), Law: Of(e)));
        var read = Names($"{batch.Entry?.Value} {batch.Said.Value}")
            .Select(n => (Name: n.ToString(), Law: _law.Staff(AskedTaxon.Of(n))));
        return guessed.Concat(read).Where(f => f.Law is not null).DistinctBy(f => f.Law)
            .Select(f => site.Words.Say("docket.maybe_law", ("name", f.Name), ("law", f.Law!)));
    }

    /// <summary>Any two words side by side may be a genus and an epithet; the lists know which are.</summary>
    private static IEnumerable<ScientificName> Names(string said)
    {
        var words = string.Concat(said.Select(c => char.IsAsciiLetter(c) ? char.ToLowerInvariant(c) : ' '))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Zip(words.Skip(1))
            .Select(w => ScientificName.Parse($"{char.ToUpperInvariant(w.First[0])}{w.First[1..]} {w.Second}"))
            .OfType<ScientificName>().Distinct();
    }
}
