using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>From a supplier's file to its lines, each matched with a species or kept for a person to say.</summary>
public sealed class PackingListReader(NameMatcher matcher, RememberedAnswers answers, DiagnosticBag bag)
{
    /// <param name="path">The file.</param>
    /// <param name="shownPath">The file as messages show it.</param>
    /// <returns>Nothing when the list can't be used; then the bag says why.</returns>
    public PackingList? Read(string path, string shownPath) =>
        new ListFile(shownPath, bag).Read(path) is { } rows
            ? Read(rows, Path.GetFileName(path), shownPath)
            : null;

    internal PackingList? Read(IReadOnlyList<ListRow> rows, string file, string shownPath)
    {
        if (rows.All(r => r.IsEmpty))
            return Refuse(PackingListCodes.NoLines, shownPath);
        if ((ListColumns.Find(rows) ?? GuessedColumns.Find(rows, matcher)) is not { } columns)
            return Refuse(PackingListCodes.NoNames, shownPath);
        var skipped = rows.Where(r => r.Line < columns.HeaderLine && !r.IsEmpty)
            .Select(r => new SkippedRow(r.Line, r.Said, SkipReason.Preamble)).ToList();
        var lines = Lines(rows.Where(r => r.Line > columns.HeaderLine && !r.IsEmpty), columns, skipped);
        return lines.Count == 0 ? Refuse(PackingListCodes.NoLines, shownPath) : new PackingList(file, lines, skipped);
    }

    private List<MatchedLine> Lines(IEnumerable<ListRow> rows, ListColumns columns, List<SkippedRow> skipped)
    {
        var reader = new LineReader(columns, matcher.IsLikeGenus);
        var read = rows.Select(r => (Row: r, Line: reader.Read(r))).ToList();
        var counted = read.Count(r => r.Line?.Count is not null);
        var genera = read.Select(r => r.Line?.Reading).OfType<NameReading>()
            .Where(n => !n.IsAbbreviated && n.Genus.Length > 3).Select(n => n.Genus).ToHashSet();
        var lines = new List<MatchedLine>();
        foreach (var (row, line) in read)
        {
            var matched = line is null ? null : Match(line, genera);
            if (SkipFor(matched, counted > read.Count / 2) is { } reason)
                skipped.Add(new SkippedRow(row.Line, row.Said, reason));
            else
                lines.Add(matched!);
        }
        return lines;
    }

    private MatchedLine Match(PackedLine line, IReadOnlySet<string> genera)
    {
        var match = matcher.Match(line.Written(genera));
        if (answers.Find(line) is { } answered)
            return new MatchedLine(line, answered, NameTaken.Answered, match);
        return match.Taken is { } taken
            ? new MatchedLine(line, taken.Species.Key, Reason(taken.Rung), match)
            : new MatchedLine(line, null, null, match);
    }

    /// <summary>A line that was taken for a fish is one, whatever else stands in it.</summary>
    private static SkipReason? SkipFor(MatchedLine? line, bool mostHaveCounts)
    {
        if (line is null)
            return SkipReason.NoName;
        if (line.Entry is not null)
            return null;
        if (line.Line.NameText.Split(' ').Any(w => ListWords.Find(w)?.Kind == WordKind.Noise))
            return SkipReason.NotFish;
        return mostHaveCounts && line.Line is { Count: null, IsLikeFish: false } ? SkipReason.NoCount : null;
    }

    private static NameTaken Reason(MatchRung rung) => rung switch
    {
        MatchRung.Exact => NameTaken.Exact,
        MatchRung.FormerName => NameTaken.FormerName,
        _ => NameTaken.Spelling,
    };

    private PackingList? Refuse(DiagnosticCode code, string shownPath)
    {
        bag.Add(code, SourceSpan.WholeFile(shownPath));
        return null;
    }
}
