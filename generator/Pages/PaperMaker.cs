using CareSheets.Pages.Law;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the papers of a species: the buyer's home sheet and the card on the tank.</summary>
internal sealed class PaperMaker(Site site)
{
    /// <summary>The card has room for these; the sheet has all.</summary>
    private const int CautionsOnCard = 2;

    private readonly EntryFacts _facts = new(site);
    private readonly RangeRowMaker _rows = new(site);
    private readonly LawMaker _law = new(site);
    private readonly AdviceMaker _advice = new(site);

    private IReadOnlyList<Hazard> Hazards => site.Collection.Practice.Hazards;

    public HomeSheet Sheet(Entry entry, Html prose)
    {
        var address = Routes.HomeSheet(entry);
        var sheet = new HomeSheet
        {
            Address = address,
            Frame = Frame(address, "sentence.sheet_title", entry),
            Paper = site.Collection.Store.Paper.ToLowerInvariant(),
            ScientificName = entry.ScientificName.Value.ToString(),
            Authorship = entry.Authorship.Value.Text,
            VernacularName = entry.VernacularName,
            Classification = site.Words.Say("sentence.classification",
                ("order", entry.Order.Value), ("family", entry.Family.Value)),
            Room = [.. _facts.Room(entry)],
            Water = _rows.Make(entry),
            Living =
            [
                .. _facts.WaterWords(entry), .. _facts.Food(entry), .. _facts.Company(entry), .. _facts.Active(entry),
                Origin(entry), .. _facts.Habitat(entry), .. Demands(entry),
            ],
            Advice = [.. _advice.Facts(entry)],
            Licence = site.Collection.Store.Licence ?? "",
            Covers = _advice.Covers(entry),
            Prose = prose,
            Cautions = [.. CautionsOf.Entry(entry, Hazards).Select(c => c.Brief)],
            Everywhere = [.. CautionsOf.EveryAquarium(Hazards).Select(c => c.Brief)],
            Law = _law.Paper(entry).InOne,
            EvidenceLine = EvidenceLine(entry),
            Reviewed = DateText.Of(entry.Reviewed, site.Words),
            PageAddress = site.Collection.Store.Address + Routes.Species(entry),
            PageHref = Routes.Between(address, Routes.Species(entry)),
        };
        return sheet with { Prose = SheetProse.Fit(sheet, prose) };
    }

    public TankCard Card(Entry entry)
    {
        var address = Routes.TankCard(entry);
        var water = _rows.MakeForCard(entry);
        // An estimate says so in a line of its own, which the last caution makes room for.
        var cautions = water.Any(row => row.IsEstimated) ? CautionsOnCard - 1 : CautionsOnCard;
        return new TankCard
        {
            Address = address,
            Frame = Frame(address, "sentence.card_title", entry),
            ScientificName = entry.ScientificName.Value.ToString(),
            VernacularName = entry.VernacularName,
            Origin = Countries(entry),
            Facts = [_facts.Length(entry), _facts.Group(entry), _facts.Tank(entry), Temper(entry), Diet(entry)],
            Water = water,
            Cautions = [.. LawOnCard(entry, cautions)],
            Reviewed = DateText.Of(entry.Reviewed, site.Words),
            PageHref = Routes.Between(address, Routes.Species(entry)),
        };
    }

    /// <summary>A list that names the fish comes before its cautions and takes the place of one.</summary>
    private IEnumerable<string> LawOnCard(Entry entry, int lines)
    {
        var cautions = CautionsOf.Entry(entry, Hazards).Select(c => c.Brief);
        return (_law.Card(entry) is { } law ? cautions.Prepend(law) : cautions).Take(lines);
    }

    private PageFrame Frame(string address, string title, Entry entry)
    {
        var said = site.Words.Say(title, ("vernacular", entry.VernacularName));
        return site.Frames.Make(address, said, said, isListed: false);
    }

    private Fact Temper(Entry entry) =>
        new(site.Words["fact.others"], site.Words[$"others.{entry.Company.Others.Value}"]);

    private Fact Diet(Entry entry) => new(site.Words["fact.diet"], _facts.List("diet", entry.Diet));

    private Fact Origin(Entry entry) => new(site.Words["fact.origin"], Countries(entry));

    private IEnumerable<Fact> Demands(Entry entry)
    {
        var demands = new DemandFacts(site).Brief(entry);
        if (demands.Length > 0)
            yield return new Fact(site.Words["fact.demands"], demands);
    }

    private string Countries(Entry entry) => string.Join(site.Words["sentence.list_separator"],
        entry.Origin.CountryCodes.Select(c => CountryName.Of(c.Value, site.Words)));

    private string EvidenceLine(Entry entry) => string.Join(" ",
        new EvidenceFacts(site).Make(entry)
            .GroupBy(f => f.Value)
            .Select(g => site.Words.Say("sentence.evidence_line",
                ("figures", string.Join(site.Words["sentence.list_separator"], g.Select(f => f.Label))),
                ("source", g.Key))));
}
