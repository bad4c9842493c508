using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.Regulations;

namespace CareSheets.PackingLists;

/// <summary>
/// What the lists of law that bind the shop say of a line, by its own name and by those that it may mean.
/// Silence means nothing: a list may be incomplete, and the authority has the last word.
/// </summary>
public sealed class LineLaw(RegulationFinder finder, SpeciesCollection collection)
{
    /// <summary>The line with what the lists say, and with the guesses that they name.</summary>
    public MatchedLine Of(MatchedLine line) => line with
    {
        Law = Said(line),
        Watched = line.Perhaps.Select(c => c.Species.Key)
            .Where(k => collection.Find(k) is { } entry && finder.Of(AskedTaxon.Of(entry)).Strictest?.Rule is not null)
            .ToHashSet(),
    };

    /// <summary>What they say of a species that has no entry; nothing where no list names it.</summary>
    public string? Of(ScientificName name, string? family) =>
        Say(name.ToString(), AskedTaxon.Of(name, family, GenusTable.Known.Find(name.Genus)?.Order), isGuess: false);

    private IReadOnlyList<string> Said(MatchedLine line)
    {
        var asked = line.Entry is { } entry && collection.Find(entry) is { } known
            ? [(known.ScientificName.Value.ToString(), AskedTaxon.Of(known))]
            : Read(line.Line.Reading).Concat(Guessed(line));
        return [.. asked.Select(a => Say(a.Item1, a.Item2, line.Entry is null)).OfType<string>().Distinct()];
    }

    private static IEnumerable<(string, AskedTaxon)> Read(NameReading read)
    {
        var genus = GenusTable.Known.Find(read.Genus);
        if (read.Name is { } name)
            yield return (name.ToString(), AskedTaxon.Of(name, genus?.Family, genus?.Order));
        else if (read.Genus.Length > 2 && !read.IsAbbreviated)
            yield return (read.Genus, AskedTaxon.OfGenus(read.Genus, genus?.Family, genus?.Order));
    }

    private IEnumerable<(string, AskedTaxon)> Guessed(MatchedLine line) =>
        from candidate in line.Perhaps
        let entry = collection.Find(candidate.Species.Key)
        where entry is not null
        select (entry.ScientificName.Value.ToString(), AskedTaxon.Of(entry));

    private string? Say(string name, AskedTaxon taxon, bool isGuess) =>
        finder.Of(taxon).Strictest is { Rule: { } rule } listed
            ? $"{(isGuess ? "if it is " : "")}{name}: {Word(rule.Effect)} by {listed.List.Title.Value}" +
              $"{(rule.Clause.Length > 0 ? $", {rule.Clause}" : "")}; ask {listed.List.Authority}"
            : null;

    private static string Word(RegulationEffect effect) => effect switch
    {
        RegulationEffect.Prohibited => "forbidden",
        RegulationEffect.Permit => "allowed only with a permit",
        RegulationEffect.Trade => "controlled in trade",
    };
}
