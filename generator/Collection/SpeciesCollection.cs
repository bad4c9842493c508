using CareSheets.Arrivals;
using CareSheets.Names;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// All entries, linked: whatever an entry names, another entry, a reference, a country, is known
/// to exist. Lists are in a fixed order, so that two runs agree.
/// </summary>
public sealed class SpeciesCollection
{
    private readonly Dictionary<string, Entry> _byName;
    private readonly ILookup<string, Entry> _byGenus;
    private readonly ILookup<string, Entry> _byFamily;
    private readonly HashSet<string> _keptApart;

    internal SpeciesCollection(
        Store store, IEnumerable<Entry> entries, IEnumerable<Reference> references,
        IEnumerable<GlossaryTerm> glossary, FigureDeclarations figures, KnownNames known)
    {
        Known = known;
        Store = store;
        Figures = figures;
        Entries = [.. entries.OrderBy(e => e.ScientificName.Value.ToString(), StringComparer.Ordinal)];
        _byName = Entries.ToDictionary(e => e.Name);
        _byGenus = Entries.ToLookup(e => e.Genus);
        _byFamily = Entries.ToLookup(e => e.Family.Value);
        References = references.ToDictionary(r => r.Key.Value);
        Glossary = [.. glossary.OrderBy(t => t.Term, StringComparer.OrdinalIgnoreCase)];
        FormerNames = FormerNamesOf(Entries);
        _keptApart = Entries.SelectMany(e => e.Company.NotWith).Select(n => n.Value).ToHashSet();
        NeedingSalt = [.. Entries.Where(FreshWater.NeedsSalt)];
        Orders = TaxaOf(TaxonRank.Order, e => e.Order.Value, _ => "");
        Families = TaxaOf(TaxonRank.Family, e => e.Family.Value, e => e.Order.Value);
        Genera = TaxaOf(TaxonRank.Genus, e => e.Genus, e => e.Family.Value);
        Countries = PlacesOf(e => e.Origin.CountryCodes.Select(c => c.Value));
        Waters = PlacesOf(e => e.Origin.WaterBodies.Select(w => w.Value));
    }

    public Store Store { get; }

    /// <summary>The care ranges that the schema declares, in its order.</summary>
    public IReadOnlyList<CareRangeDeclaration> Ranges => Figures.Ranges;

    public FigureDeclarations Figures { get; }

    /// <summary>The fish room's rules, hazards and demands.</summary>
    public Practice Practice { get; internal init; } = Practice.None;

    /// <summary>What customers call families and are told of them, by Latin name; some may have nothing.</summary>
    public IReadOnlyDictionary<string, FamilyNote> FamilyNotes { get; internal init; } =
        new Dictionary<string, FamilyNote>();

    public KnownNames Known { get; }

    /// <summary>By scientific name.</summary>
    public IReadOnlyList<Entry> Entries { get; }

    /// <summary>Entries that lack something: they are proofed, and are in no list and on no page.</summary>
    public IReadOnlyList<Entry> Unfinished { get; internal init; } = [];

    public IReadOnlyDictionary<string, Reference> References { get; }

    public IReadOnlyList<GlossaryTerm> Glossary { get; }

    /// <summary>Address of each former name, with the entry that it leads to.</summary>
    public IReadOnlyDictionary<string, FormerName> FormerNames { get; }

    public IReadOnlyList<Taxon> Orders { get; }

    public IReadOnlyList<Taxon> Families { get; }

    public IReadOnlyList<Taxon> Genera { get; }

    /// <summary>Entries by ISO code of the country.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Entry>> Countries { get; }

    /// <summary>Entries by name of the river, basin or lake.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Entry>> Waters { get; }

    /// <summary>Taxa of any rank that some entry must not share a tank with.</summary>
    public IReadOnlySet<string> KeptApart => _keptApart;

    /// <summary>Entries of fishes that can't live in fresh water, by scientific name.</summary>
    public IReadOnlyList<Entry> NeedingSalt { get; }

    public ArrivalBook Arrivals { get; init; } = new([], Observation.Usual);

    /// <summary>The entry of a name, be it today's or a former one.</summary>
    public Entry? Find(string name) =>
        _byName.GetValueOrDefault(name) ?? FormerNames.GetValueOrDefault(name)?.Entry;

    /// <summary>The other entries of the genus, by scientific name.</summary>
    public IEnumerable<Entry> Congeners(Entry entry) =>
        _byGenus[entry.Genus].Where(e => e.Name != entry.Name);

    /// <summary>The entries of the family that are in other genera, by scientific name.</summary>
    public IEnumerable<Entry> FamilyBeyondGenus(Entry entry) =>
        _byFamily[entry.Family.Value].Where(e => e.Genus != entry.Genus);

    /// <summary>
    /// Genera in which entries were named before and none is today, with the genera in which those are now.
    /// </summary>
    public IEnumerable<(string Former, IReadOnlyList<Taxon> Now)> FormerGenera =>
        from former in FormerNames.Values
        group former.Entry.Genus by former.Name.Genus into genus
        where !_byGenus.Contains(genus.Key)
        orderby genus.Key
        select (genus.Key, (IReadOnlyList<Taxon>)[.. Genera.Where(g => genus.Contains(g.Name))]);

    private static SortedDictionary<string, FormerName> FormerNamesOf(IEnumerable<Entry> entries)
    {
        var names = new SortedDictionary<string, FormerName>(StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            foreach (var former in entry.FormerNames)
                names[former.Value.Slug] = new FormerName(former.Value, entry);
        }
        return names;
    }

    private List<Taxon> TaxaOf(TaxonRank rank, Func<Entry, string> name, Func<Entry, string> parent) =>
    [
        .. Entries.GroupBy(name)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new Taxon(rank, group.Key, parent(group.First()), [.. group])),
    ];

    private SortedDictionary<string, IReadOnlyList<Entry>> PlacesOf(Func<Entry, IEnumerable<string>> places)
    {
        var found = Entries.SelectMany(e => places(e).Distinct().Select(p => (Place: p, Entry: e)))
            .GroupBy(p => p.Place)
            .ToDictionary(g => g.Key, g => (IReadOnlyList<Entry>)[.. g.Select(p => p.Entry)]);
        return new SortedDictionary<string, IReadOnlyList<Entry>>(found, StringComparer.Ordinal);
    }
}

/// <summary>A name that an entry had before, which leads to it for ever.</summary>
public sealed record FormerName(ScientificName Name, Entry Entry);
