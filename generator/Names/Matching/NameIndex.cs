namespace CareSheets.Names.Matching;

/// <summary>All names of all species, by every way of looking them up.</summary>
public sealed class NameIndex
{
    private readonly ILookup<string, IndexedName> _byName;
    private readonly ILookup<(string Genus, string Key), IndexedName> _bySpelling;
    private readonly ILookup<string, IndexedName> _byEpithet;
    private readonly ILookup<string, IndexedName> _bySound;
    private readonly ILookup<string, NamedSpecies> _byCode;

    public NameIndex(IEnumerable<NamedSpecies> species)
    {
        Species = [.. species.OrderBy(s => s.Key, StringComparer.Ordinal)];
        var names = Species.SelectMany(s => s.Former.Select(f => new IndexedName(s, f, false))
            .Prepend(new IndexedName(s, s.Valid, true))).ToList();
        _byName = names.ToLookup(n => n.Name.ToString().ToLowerInvariant());
        _bySpelling = names.ToLookup(n => (n.Name.Genus.ToLowerInvariant(), SpellingOf(n.Name)));
        _byEpithet = names.ToLookup(n => SpellingKey.Of(n.Name.Subspecies ?? n.Name.Epithet));
        _bySound = names.ToLookup(n => n.Epithet.Key);
        _byCode = Species.SelectMany(s => s.TradeCodes.Select(c => (Code: c, Species: s)))
            .ToLookup(c => c.Code, c => c.Species);
        Genera = names.GroupBy(n => n.Name.Genus).ToDictionary(
            g => g.Key,
            g => new IndexedGenus(
                g.Key, SoundedWord.Genus(g.Key), IndexedName.LettersOf(g.Key.ToLowerInvariant()), [.. g]));
        Vernaculars = new VernacularIndex(Species);
    }

    public IReadOnlyList<NamedSpecies> Species { get; }

    internal IReadOnlyDictionary<string, IndexedGenus> Genera { get; }

    internal VernacularIndex Vernaculars { get; }

    internal IEnumerable<IndexedName> ByName(string name) => _byName[name.ToLowerInvariant()];

    /// <summary>Names of the genus whose epithets are the same word to the Code.</summary>
    internal IEnumerable<IndexedName> BySpelling(ScientificName name) =>
        _bySpelling[(name.Genus.ToLowerInvariant(), SpellingOf(name))];

    /// <summary>Names of any genus whose last epithet is the same word to the Code.</summary>
    internal IEnumerable<IndexedName> ByEpithet(string epithet) => _byEpithet[SpellingKey.Of(epithet)];

    internal IEnumerable<IndexedName> BySound(string epithet) => _bySound[PhoneticKey.OfEpithet(epithet)];

    internal IEnumerable<NamedSpecies> ByCode(string code) => _byCode[code];

    private static string SpellingOf(ScientificName name) => name.Subspecies is { } subspecies
        ? $"{SpellingKey.Of(name.Epithet)} {SpellingKey.Of(subspecies)}"
        : SpellingKey.Of(name.Epithet);
}
