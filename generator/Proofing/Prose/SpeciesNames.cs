using CareSheets.Collection;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// The names of all entries as words, by the first of them: made once for a collection, for every
/// prose is searched for all of them.
/// </summary>
internal sealed class SpeciesNames
{
    private readonly ILookup<string, SpeciesName> _byFirst;
    private readonly HashSet<string> _entries;

    public SpeciesNames(SpeciesCollection collection)
    {
        _entries = [.. collection.Entries.Select(e => e.Name)];
        _byFirst = ByFirst(collection);
    }

    public bool HasEntry(string name) => _entries.Contains(name);

    private static ILookup<string, SpeciesName> ByFirst(SpeciesCollection collection) => collection.Entries
        .SelectMany(entry => entry.VernacularNames.Select(n => n.Value)
            .Append(entry.ScientificName.Value.ToString()).Append(entry.Genus)
            .Select(name => new SpeciesName(entry.Name, entry.Genus, Words(name))))
        .Where(name => name.Words.Count > 0).ToLookup(name => name.Words[0]);

    public IEnumerable<SpeciesName> BeginningWith(string word) => _byFirst[word];

    public static IReadOnlyList<string> Words(string name) =>
        [.. ProseTokens.Of(name).Where(t => t.Kind == TokenKind.Word).Select(t => t.Text)];
}

/// <summary>One name of an entry, in lower-case words.</summary>
internal sealed record SpeciesName(string Entry, string Genus, IReadOnlyList<string> Words)
{
    /// <summary>
    /// How many tokens the name takes at this place, or 0 where it does not stand. In prose it may be
    /// in the plural, with hyphens or without.
    /// </summary>
    public int LengthAt(TokenRun run, int at)
    {
        var next = at;
        for (var i = 0; i < Words.Count; i++, next++)
        {
            if (i > 0 && run[next].Text == "-")
                next++;
            var word = run[next].Text;
            var isLast = i == Words.Count - 1;
            if (word != Words[i] && !(isLast && (word == Words[i] + "s" || word == Words[i] + "es")))
                return 0;
        }
        return next - at;
    }
}
