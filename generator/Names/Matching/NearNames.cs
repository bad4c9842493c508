namespace CareSheets.Names.Matching;

/// <summary>Names near to a written one, genus first and then epithet (Rees 2014).</summary>
internal sealed class NearNames(NameIndex index, GenusTable genera)
{
    private const int MostInGenus = 3;
    private const int MostInEpithet = 4;

    private readonly Dictionary<string, IReadOnlyList<(IndexedGenus Genus, int Distance)>> _nearGenera = [];

    /// <summary>A genus that exists, here or in the table of genera: it is never taken for another.</summary>
    public bool Exists(string genus) => index.Genera.ContainsKey(genus) || genera.Find(genus) is not null;

    public bool IsLikeGenus(string word) =>
        word.Length > 3 && char.IsLetter(word[0]) && (Exists(word) || Genera(word).Count > 0);

    public IEnumerable<MatchCandidate> Of(NameReading read)
    {
        if (read.Epithets.Count == 0)
            return [];
        var epithet = read.Epithets[^1];
        var sounded = SoundedWord.Epithet(epithet);
        var letters = IndexedName.LettersOf(sounded.Text);
        return Genera(read.Genus)
            .SelectMany(g => g.Genus.Names.Select(n => Compare(read, g.Distance, n, sounded, letters)))
            .OfType<MatchCandidate>()
            .Concat(Misread(read));
    }

    /// <summary>The genus itself, or, where no such genus exists, those near to it.</summary>
    private IReadOnlyList<(IndexedGenus Genus, int Distance)> Genera(string genus)
    {
        if (_nearGenera.TryGetValue(genus, out var known))
            return known;
        var word = SoundedWord.Genus(genus);
        var letters = IndexedName.LettersOf(word.Text);
        IReadOnlyList<(IndexedGenus, int)> found = Exists(genus)
            ? index.Genera.TryGetValue(genus, out var own) ? [(own, 0)] : []
            :
            [
                .. index.Genera.Values
                    .Where(g => g.Word.Key == word.Key ||
                        IndexedName.CanBeWithin(MostInGenus, word.Text, letters, g.Word.Text, g.Letters))
                    .Select(g => (Genus: g, Distance: NearRule.Distance(word.Text, g.Word.Text)))
                    .Where(g => NearRule.Genera(word, g.Genus.Word, g.Distance)),
            ];
        return _nearGenera[genus] = found;
    }

    private static MatchCandidate? Compare(
        NameReading read, int genusDistance, IndexedName name, SoundedWord epithet, uint letters)
    {
        if (name.Epithet.Key != epithet.Key &&
            !IndexedName.CanBeWithin(MostInEpithet, epithet.Text, letters, name.Epithet.Text, name.Letters))
            return null;
        var distance = NearRule.Distance(epithet.Text, name.Epithet.Text);
        if (!NearRule.Epithets(epithet, name.Epithet, distance) ||
            !NearRule.IsWithin(genusDistance + distance, read.Epithets.Count))
            return null;
        var length = read.Genus.Length + epithet.Text.Length;
        return new MatchCandidate(
            name.Species, MatchRung.Near, name.Name.ToString(),
            0.9 * (1 - (double)(genusDistance + distance) / length));
    }

    /// <summary>Names that the text becomes when letters that look alike are read the other way.</summary>
    private IEnumerable<MatchCandidate> Misread(NameReading read)
    {
        const double sureness = 0.88;
        var epithet = string.Join(' ', read.Epithets);
        var genus = read.Genus.ToLowerInvariant();
        var texts = Exists(read.Genus)
            ? Misreading.Of(epithet).Select(e => $"{genus} {e}")
            : Misreading.Of(genus).Select(g => $"{g} {epithet}")
                .Concat(Misreading.Of(genus).SelectMany(g => Misreading.Of(epithet).Select(e => $"{g} {e}")));
        return texts.SelectMany(index.ByName)
            .Select(n => new MatchCandidate(n.Species, MatchRung.Near, n.Name.ToString(), sureness));
    }
}
