namespace CareSheets.Names.Matching;

/// <summary>
/// Finds the species that a written name means. The ladder is climbed down rung by rung; only a valid name,
/// a former one or an equivalent spelling with a single target is taken. All else is offered to a person.
/// </summary>
public sealed class NameMatcher(NameIndex index, GenusTable genera)
{
    private readonly NearNames _near = new(index, genera);

    /// <summary>Whether a word is a genus that exists, or nearly one that has names here.</summary>
    public bool IsLikeGenus(string word) => _near.IsLikeGenus(word);

    public NameMatch Match(WrittenName written)
    {
        var (firm, doubt) = Firm(written);
        var species = firm.Select(c => c.Species).Distinct().ToList();
        if (doubt == Doubt.None && species.Count == 1)
            doubt = Contradicts(written, species[0]) ? Doubt.Contradiction : Doubt.None;
        if (doubt == Doubt.None && species.Count == 1)
            return new NameMatch(firm[0], Doubt.None, Best(Like(written).Where(c => c.Species != species[0])));
        var others = Best(firm.Concat(Like(written)));
        if (species.Count > 1)
            doubt = Doubt.TwoTargets;
        else if (others.Count == 0 && doubt is (Doubt.None or Doubt.OnlyLike))
            doubt = Doubt.NothingLikeIt;
        else if (doubt == Doubt.None)
            doubt = !_near.Exists(written.Reading.Genus) ? Doubt.OnlyLike
                : written.Reading.Epithets.Count == 0 ? Doubt.GenusAlone : Doubt.GenusExists;
        return new NameMatch(null, doubt, others);
    }

    /// <summary>Candidates of the first rung that has any, and what speaks against taking them.</summary>
    private (IReadOnlyList<MatchCandidate> Found, Doubt Doubt) Firm(WrittenName written)
    {
        var read = written.Reading;
        var doubt = read.IsHybrid ? Doubt.Hybrid : read.Qualifiers.Count > 0 ? Doubt.Qualified : Doubt.None;
        if (read.Rest.Length > 0 && doubt == Doubt.None)
            doubt = Doubt.OnlyLike;
        var names = Names(written);
        var rungs = new Func<ScientificName, IEnumerable<MatchCandidate>>[]
        {
            n => Named(n, isValid: true), n => Named(n, isValid: false), Spelt,
        }.Skip(read.Problems.Contains(NameProblem.NotLatinLetters) ? 2 : 0);
        var found = rungs.Select(rung => names.SelectMany(rung).DistinctBy(c => c.Species).ToList())
            .FirstOrDefault(f => f.Count > 0) ?? [];
        return (found, doubt);
    }

    /// <summary>The name itself, or, of a shortened genus, what it is in full by the rest of the list.</summary>
    private IReadOnlyList<ScientificName> Names(WrittenName written)
    {
        var read = written.Reading;
        if (read.Name is { } name)
            return [name];
        if (!read.IsAbbreviated || read.Epithets.Count == 0)
            return [];
        return
        [
            .. written.Genera.Where(g => g.StartsWith(read.Genus, StringComparison.Ordinal))
                .Select(g => ScientificName.Parse($"{g} {string.Join(' ', read.Epithets)}"))
                .OfType<ScientificName>()
                .Where(n => index.BySpelling(n).Any())
                .Where(_ => EveryGenus(read).Distinct().Count() == 1),
        ];
    }

    /// <summary>Species of any genus with that beginning and that epithet: the context must hide none.</summary>
    private IEnumerable<NamedSpecies> EveryGenus(NameReading read) =>
        index.ByEpithet(read.Epithets[^1])
            .Where(n => n.Name.Genus.StartsWith(read.Genus, StringComparison.Ordinal))
            .Select(n => n.Species);

    private IEnumerable<MatchCandidate> Named(ScientificName name, bool isValid) =>
        index.ByName(name.ToString()).Where(n => n.IsValid == isValid).Select(n => new MatchCandidate(
            n.Species, isValid ? MatchRung.Exact : MatchRung.FormerName, n.Name.ToString(), isValid ? 1 : 0.98));

    private IEnumerable<MatchCandidate> Spelt(ScientificName name) =>
        index.BySpelling(name).OrderByDescending(n => n.IsValid)
            .Select(n => new MatchCandidate(n.Species, MatchRung.Spelling, n.Name.ToString(), 0.95));

    /// <summary>A code or a name beside it that belongs to other species and not to this one.</summary>
    private bool Contradicts(WrittenName written, NamedSpecies species)
    {
        var beside = index.Vernaculars.Exactly(written.Beside).ToList();
        var codes = written.Codes;
        return (beside.Count > 0 && !beside.Contains(species)) ||
            (codes.Count > 0 && !codes.Any(species.TradeCodes.Contains) &&
                (species.TradeCodes.Count > 0 || codes.Any(c => index.ByCode(c).Any())));
    }

    private IEnumerable<MatchCandidate> Like(WrittenName written)
    {
        var likeness = new Likeness(index, _near);
        return likeness.OtherGenus(written.Reading).Concat(_near.Of(written.Reading))
            .Concat(likeness.WithoutThird(written.Reading)).Concat(likeness.Coded(written))
            .Concat(likeness.Vernacular(written).Where(c => !IsFar(written, c)))
            .Concat(likeness.GenusOnly(written.Reading));
    }

    /// <summary>A species that is only called alike, where the name is a full one of another order.</summary>
    private bool IsFar(WrittenName written, MatchCandidate called) =>
        written.Reading.Epithets.Count > 0 && genera.Find(written.Reading.Genus)?.Order is { } order &&
        genera.Find(called.Species.Valid.Genus)?.Order is { } other && order != other &&
        !index.Vernaculars.Exactly(written.Beside).Contains(called.Species);

    private static List<MatchCandidate> Best(IEnumerable<MatchCandidate> candidates) =>
    [
        .. candidates.GroupBy(c => c.Species).Select(g => g.MaxBy(c => c.Sureness)!)
            .OrderByDescending(c => c.Sureness).ThenBy(c => c.Species.Key, StringComparer.Ordinal)
            .Take(NameMatch.MostOthers),
    ];
}
