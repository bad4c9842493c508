namespace CareSheets.Names.Matching;

/// <summary>The rungs that only ever offer: same epithet elsewhere, code, customers' name, genus.</summary>
internal sealed class Likeness(NameIndex index, NearNames near)
{
    private const double SameEpithet = 0.8;
    private const double SameSound = 0.6;
    private const double SameSpecies = 0.84;
    private const double SameCode = 0.85;
    private const double SameGenus = 0.2;
    private const double MostForVernacular = 0.84;

    /// <summary>Names of the same epithet, or of one that sounds like it, in whatever genus.</summary>
    public IEnumerable<MatchCandidate> OtherGenus(NameReading read)
    {
        foreach (var epithet in read.Epithets.TakeLast(1))
        {
            foreach (var name in index.ByEpithet(epithet))
                yield return Offer(read, name, MatchRung.OtherGenus, SameEpithet);
            if (epithet.Length >= 5 && !near.Exists(read.Genus))
            {
                foreach (var name in index.BySound(epithet))
                    yield return Offer(read, name, MatchRung.Near, SameSound);
            }
        }
    }

    /// <summary>The species of which a third word tells more, or which a word of the trade stands behind.</summary>
    public IEnumerable<MatchCandidate> WithoutThird(NameReading read) =>
        from epithet in read.Epithets.SkipLast(1).Take(1)
        from name in index.ByName($"{read.Genus} {epithet}")
        select new MatchCandidate(name.Species, MatchRung.Near, name.Name.ToString(), SameSpecies);

    public IEnumerable<MatchCandidate> Coded(WrittenName written) =>
        from code in written.Codes
        from species in index.ByCode(code)
        select new MatchCandidate(species, MatchRung.TradeCode, code, SameCode);

    public IEnumerable<MatchCandidate> Vernacular(WrittenName written) =>
        from text in new[] { written.Text, written.Beside }.Concat(written.Reading.Tags)
        from like in index.Vernaculars.Like(text)
        select new MatchCandidate(
            like.Species, MatchRung.Vernacular, like.Name, MostForVernacular * like.Likeness);

    public IEnumerable<MatchCandidate> GenusOnly(NameReading read) =>
        index.Genera.TryGetValue(read.Genus, out var genus)
            ? genus.Names.Select(n => new MatchCandidate(
                n.Species, MatchRung.GenusOnly, n.Name.ToString(), n.IsValid ? SameGenus : SameGenus / 2))
            : [];

    /// <summary>Sureness grows with the likeness of the genera, so that the nearest comes first.</summary>
    private static MatchCandidate Offer(NameReading read, IndexedName name, MatchRung rung, double sureness)
    {
        var length = Math.Max(read.Genus.Length, name.Name.Genus.Length);
        var apart = read.Genus.Length == 0 ? 1
            : (double)NearRule.Distance(read.Genus.ToLowerInvariant(), name.Name.Genus.ToLowerInvariant()) / length;
        return new MatchCandidate(name.Species, rung, name.Name.ToString(), sureness - 0.1 * Math.Min(1, apart));
    }
}
