using CareSheets.Pages.Law;
using CareSheets.Paper;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the buyer's home sheet of a species.</summary>
internal sealed class PaperMaker(Site site)
{
    private readonly EntryFacts _facts = new(site);
    private readonly RangeRowMaker _rows = new(site);
    private readonly LawMaker _law = new(site);
    private readonly AdviceMaker _advice = new(site);

    private IReadOnlyList<Hazard> Hazards => site.Collection.Practice.Hazards;

    public HomeSheet Sheet(Entry entry, SpeciesProse prose)
    {
        var address = Routes.HomeSheet(entry);
        var page = site.Collection.Store.Address + Routes.Species(entry);
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
            Water = [.. _rows.Make(entry).Select(ToKeep)],
            Living =
            [
                .. _facts.WaterWords(entry), .. _facts.Food(entry), .. _facts.Company(entry), .. _facts.Active(entry),
                Origin(entry), .. _facts.Habitat(entry), .. Demands(entry),
            ],
            Advice = [.. _advice.Facts(entry)],
            Licence = site.Collection.Store.Licence ?? "",
            Covers = _advice.Covers(entry),
            Prose = [],
            IsShortened = false,
            IsOnePage = true,
            Cautions = [.. CautionsOf.Entry(entry, Hazards).Select(c => c.Brief)],
            Everywhere = [.. CautionsOf.EveryAquarium(Hazards).Select(c => c.Brief)],
            Law = _law.Paper(entry).InOne,
            EvidenceLine = new EvidenceFacts(site).Line(entry),
            Reviewed = DateText.Of(entry.Reviewed, site.Words),
            PageAddress = page,
            PageHref = Routes.Between(address, Routes.Species(entry)),
            Code = site.PageCodes.GetOrAdd(page, QrCode.Of) is { } code
                ? CodeDrawing.Of(code, site.Words.Say("card.code_leads", ("address", page))) : null,
            Mark = "",
            Entry = entry,
        };
        return new SheetFitter(site.Words).Fit(sheet, prose.Paragraphs);
    }

    private PageFrame Frame(string address, string title, Entry entry)
    {
        var said = site.Words.Say(title, ("vernacular", entry.VernacularName));
        return site.Frames.Make(address, said, said, isListed: false);
    }

    private Fact Origin(Entry entry) => new(site.Words["fact.origin"], Countries(entry));

    private IEnumerable<Fact> Demands(Entry entry)
    {
        var demands = new DemandFacts(site).Brief(entry);
        if (demands.Length > 0)
            yield return new Fact(site.Words["fact.demands"], demands);
    }

    private string Countries(Entry entry) => string.Join(site.Words["sentence.list_separator"],
        entry.Origin.CountryCodes.Select(c => CountryName.Of(c.Value, site.Words)));

    /// <summary>Without what a fish only survives for a time: that is no advice on how to keep it.</summary>
    private static RangeRow ToKeep(RangeRow row) =>
        row with { OtherKinds = [.. row.OtherKinds.Where(k => !k.IsOnlySurvived)] };
}
