using System.Text.RegularExpressions;
using CareSheets.Collection;

namespace CareSheets.Renaming;

/// <summary>
/// Where the content still says a name after it has moved: prose, rules, words. No program knows whether
/// that is history or an oversight, so a person is told of file and line.
/// </summary>
public static partial class OldNames
{
    /// <param name="edited">The content folder as the moves leave it.</param>
    /// <param name="moves">What moved.</param>
    /// <param name="before">The collection before that.</param>
    public static IEnumerable<string> Lines(
        string edited, IReadOnlyList<NameMove> moves, SpeciesCollection before)
    {
        var names = moves.Select(m => (Name: m.OldName.ToString(), Word: Word(m.OldName.ToString(), "")))
            .Concat(EmptiedGenus.Of(moves, before).Select(g => (g.Name, Word(g.Name, Epithets(g.Name, moves)))))
            .ToList();
        foreach (var path in ContentEdit.Files(edited).Where(p => !p.StartsWith("arrivals/", StringComparison.Ordinal)))
        {
            var lines = File.ReadAllLines(Path.Combine(edited, path));
            foreach (var (name, word) in names)
            {
                if (Places(lines, word) is { Count: > 0 } places)
                    yield return Told(path, name, places);
            }
        }
    }

    /// <summary>Laws keep their own spelling, and are looked in for former names too.</summary>
    private static string Told(string path, string name, List<int> places)
    {
        var where = (places.Count == 1 ? "line " : "lines ") + string.Join(", ", places);
        return path.StartsWith("regulations/", StringComparison.Ordinal)
            ? $"{path} names {name} ({where}), as the law does: that is left as it is."
            : $"{path} still says {name} ({where}): read it through.";
    }

    /// <summary>Counted from 1.</summary>
    private static List<int> Places(string[] lines, Regex word) =>
        [.. lines.Index().Where(l => word.IsMatch(l.Item) && !History().IsMatch(l.Item)).Select(l => l.Index + 1)];

    /// <summary>A genus is not told of where the species has been told of.</summary>
    private static string Epithets(string genus, IReadOnlyList<NameMove> moves) => string.Join('|',
        moves.Where(m => m.Entry.Genus == genus).Select(m => Regex.Escape(m.OldName.Epithet)));

    private static Regex Word(string name, string notBefore) => new(
        $@"(?<![\w-]){Regex.Escape(name)}(?![\w-])" + (notBefore.Length == 0 ? "" : $@"(?! (?:{notBefore})\b)"),
        RegexOptions.CultureInvariant);

    /// <summary>Fields that hold old names for good; conditions, where an emptied genus stays beside the new.</summary>
    [GeneratedRegex(@"^(formerNames|originalNameUsage):|^\s*- [A-Z][a-z]+ [a-z]+( [a-z]+)?\s*$|\btaxon is\b")]
    private static partial Regex History();
}
