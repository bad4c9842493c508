using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Pages.Law;
using CareSheets.Pages.Mates;
using CareSheets.Pages.Outlines;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Pages.Stock;
using CareSheets.Species;
using CareSheets.Tankmates;

namespace CareSheets.Pages;

/// <summary>Makes the page of a species.</summary>
internal sealed class SpeciesPageMaker(Site site, Acquaintances mates)
{
    private readonly EntryFacts _facts = new(site);
    private readonly DemandFacts _demands = new(site);
    private readonly EvidenceFacts _evidence = new(site);
    private readonly RangeRowMaker _rows = new(site);
    private readonly MateListMaker _mates = new(site, mates);
    private readonly StockFacts _stock = new(site);
    private readonly LawMaker _law = new(site);
    private readonly SizePictureMaker _pictures = new(site.Words, site.Collection.Store.Units);

    private IReadOnlyList<Hazard> Hazards => site.Collection.Practice.Hazards;

    public SpeciesPage Make(Entry entry, Html prose)
    {
        var address = Routes.Species(entry);
        return new SpeciesPage
        {
            Address = address,
            Frame = site.Frames.Make(address, $"{entry.VernacularName} ({entry.ScientificName.Value})",
                site.Words.Say("sentence.species_description",
                    ("vernacular", entry.VernacularName), ("scientific", entry.ScientificName.Value.ToString()))),
            ScientificName = entry.ScientificName.Value.ToString(),
            Authorship = entry.Authorship.Value.Text,
            VernacularName = entry.VernacularName,
            Say = new SayText(site.Words).Of(entry.Respelling),
            OtherNames = _facts.Plain(entry.VernacularNames.Skip(1)),
            FormerNames = [.. entry.FormerNames.Select(n => n.Value.ToString())],
            TradeCodes = _facts.Plain(entry.TradeCodes),
            Classification = Classification(entry, address),
            Prose = prose,
            Glance = Glance(entry),
            Stock = _stock.Make(entry),
            ArrivalsHref = Routes.Between(address, Routes.NewArrivals),
            Picture = _pictures.Make(entry, _facts.Length(entry).Value),
            Room = [.. _facts.Room(entry)],
            Water = [.. _rows.Make(entry).Select(row => row with { Explained = Explained(row.Label, address) })],
            WaterWords = [.. _facts.WaterWords(entry)],
            Food = [.. _facts.Food(entry)],
            Company = [.. _facts.Company(entry), .. _facts.Active(entry)],
            Mates = _mates.Make(entry),
            Relatives = Relatives(entry, address),
            Countries = [.. entry.Origin.CountryCodes.Select(c => Country(c, address))],
            Waters = [.. entry.Origin.WaterBodies.Select(w => Water(w, address))],
            Place = Place(entry),
            DemandCount = _demands.Count(entry),
            DemandLimits = _demands.Limits(entry),
            Demands = _demands.Make(entry),
            Cautions = [.. CautionsOf.Entry(entry, Hazards).Select(c => new LatinText(c.Text))],
            Everywhere = [.. CautionsOf.EveryAquarium(Hazards).Select(c => new LatinText(c.Text))],
            Law = _law.Page(entry),
            Evidence = [.. _evidence.Make(entry), .. _evidence.Cautions(entry)],
            References = [.. _evidence.Works(entry).Select(k => Citations.Line(site.Collection.References[k]))],
            Reviewed = DateText.Of(entry.Reviewed, site.Words),
            SheetHref = Routes.Between(address, Routes.HomeSheet(entry)),
            CardHref = Routes.Between(address, Routes.TankCard(entry)),
        };
    }

    private Link Country(Sourced<string> code, string from) =>
        new(CountryName.Of(code.Value, site.Words), Routes.Between(from, Routes.Country(code.Value)));

    private static Link Water(Sourced<string> water, string from) =>
        new(water.Value, Routes.Between(from, Routes.Water(water.Value)));

    private Link? Explained(string label, string from) =>
        site.Collection.Glossary.FirstOrDefault(
            t => string.Equals(t.Term, label, StringComparison.OrdinalIgnoreCase)) is { } term
            ? new Link(label, $"{Routes.Between(from, Routes.Glossary)}#{term.Key.Value}")
            : null;

    private IReadOnlyList<Link> Classification(Entry entry, string from)
    {
        var rows = new SpeciesRows(site, from);
        return
        [
            rows.TaxonLink(TaxonRank.Order, entry.Order.Value),
            rows.TaxonLink(TaxonRank.Family, entry.Family.Value),
            rows.TaxonLink(TaxonRank.Genus, entry.Genus),
        ];
    }

    private IReadOnlyList<Fact> Glance(Entry entry) =>
    [
        _facts.Length(entry),
        .. _rows.MakeBrief(entry)
            .Select(row => new Fact(row.Label, row.First, row.Brief.Length > 0 ? row.Brief : row.Second)),
        _facts.Group(entry),
        _facts.Tank(entry),
    ];

    private IReadOnlyList<SpeciesGroup> Relatives(Entry entry, string from)
    {
        var rows = new SpeciesRows(site, from);
        var genus = rows.Rows(site.Collection.Congeners(entry));
        var family = rows.Rows(site.Collection.FamilyBeyondGenus(entry));
        var groups = new[]
        {
            new SpeciesGroup(site.Words.Say("sentence.same_genus", ("genus", entry.Genus)),
                rows.TaxonLink(TaxonRank.Genus, entry.Genus), genus),
            new SpeciesGroup(site.Words.Say("sentence.same_family", ("family", entry.Family.Value)),
                rows.TaxonLink(TaxonRank.Family, entry.Family.Value), family),
        };
        return [.. groups.Where(g => g.Species.Count > 0)];
    }

    private IReadOnlyList<Fact> Place(Entry entry)
    {
        var facts = new List<Fact>();
        if (entry.Origin.Locality is { } locality)
            facts.Add(new Fact(site.Words["fact.locality"], locality.Value));
        return [.. facts, .. _facts.Habitat(entry)];
    }
}
