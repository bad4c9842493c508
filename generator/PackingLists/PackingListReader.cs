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
        if (new SettledColumns(rows, matcher).Find() is not { } columns)
            return Refuse(PackingListCodes.NoNames, shownPath);
        foreach (var column in columns.Unread)
            bag.Add(PackingListCodes.UnreadColumn, SourceSpan.WholeFile(shownPath), ("column", columns.Name(column)));
        var (lines, skipped) = Lines([.. rows.Where(r => r.Line != columns.HeaderLine && !r.IsEmpty)], columns);
        return lines.Count == 0 ? Refuse(PackingListCodes.NoLines, shownPath) : new PackingList(file, lines, skipped);
    }

    private (List<MatchedLine> Lines, List<SkippedRow> Skipped) Lines(
        IReadOnlyList<ListRow> rows, ListColumns columns)
    {
        var reader = new LineReader(columns, matcher.IsLikeGenus);
        var read = rows.Select(r => (Row: r, Line: reader.Read(r))).ToList();
        var counted = read.Count(r => r.Line?.Count is not null);
        var genera = read.Select(r => r.Line?.Reading).OfType<NameReading>()
            .Where(n => !n.IsAbbreviated && n.Genus.Length > 3).Select(n => n.Genus).ToHashSet();
        var (lines, skipped) = (new List<MatchedLine>(), new List<SkippedRow>());
        foreach (var (row, line) in read)
        {
            var asked = !columns.HasCounts && (counted > 0 || columns.Unread.Count > 0);
            var matched = line is null ? null : Match(asked ? line.WithOpenCount() : line, genera);
            if (SkipFor(row, matched, columns, counted > read.Count / 2) is { } reason)
                skipped.Add(new SkippedRow(row.Line, row.Said, reason, matched));
            else
                lines.Add(matched!);
        }
        return (lines, skipped);
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

    /// <summary>A line that was taken for a fish is one, whatever else stands in it, and wherever it stands.</summary>
    private static SkipReason? SkipFor(ListRow row, MatchedLine? line, ListColumns columns, bool hasCounts) =>
        line is { Entry: not null } ? null
        : row.Line < columns.HeaderLine ? SkipReason.Preamble
        : line is null ? SkipReason.NoName
        : columns.IsRepeatedBy(row) ? SkipReason.Heading
        : new FishSigns(line, $"{line.Line.Main} {line.Line.Beside}".Trim()).Against(hasCounts);

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
