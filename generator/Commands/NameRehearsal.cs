using CareSheets.Diagnostics;
using CareSheets.Renaming;

namespace CareSheets.Commands;

/// <summary>
/// A change of name tried on a copy of the content, so that what follows is seen and not guessed, and no
/// error comes into the content itself.
/// </summary>
internal sealed class NameRehearsal
{
    private NameRehearsal(
        IReadOnlyList<NameMove> moves, IReadOnlyList<ContentEdit> edits, IReadOnlyList<string> lines, string problem)
    {
        Moves = moves;
        Edits = edits;
        Lines = lines;
        Problem = problem;
    }

    public IReadOnlyList<NameMove> Moves { get; }

    public IReadOnlyList<ContentEdit> Edits { get; }

    /// <summary>What follows, in sentences.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Why it can't be done; empty when it can.</summary>
    public string Problem { get; }

    public static NameRehearsal Of(string from, string to, ContentSettings settings)
    {
        var bench = new Workbench(settings);
        if (bench.ReadCollection() is not { } before || bench.Bag.HasErrors)
            return Refused("The content has errors: run proof first.");
        var (moves, problem) = NameMoves.Read(from, to, before);
        if (moves.Count == 0)
            return Refused(problem);
        var edits = ContentEdit.Of(settings.Content, moves, before);
        using var copy = new ContentCopy(settings.Content, settings.Schemas);
        copy.Apply(edits);
        var tried = new Workbench(new ContentSettings { Content = copy.Content, Theme = settings.Theme });
        var after = tried.ReadCollection();
        if (after is null || tried.Bag.HasErrors)
            return Refused("The content would have errors: " + string.Join(
                "; ", tried.Bag.Sorted().Where(d => d.Severity == Severity.Error).Select(d => d.Message)));
        var lines = new NameConsequences(moves, before, after, tried.Law).Lines()
            .Concat(edits.Where(e => e.From == e.To).Select(e => $"Mentioned in {e.From}, which is changed."))
            .Concat(OldNames.Lines(copy.Content, moves, before))
            .Concat(NewRemarks(bench, tried));
        return new NameRehearsal(moves, edits, [.. lines], "");
    }

    private static NameRehearsal Refused(string problem) => new([], [], [], problem);

    /// <summary>Messages that the content does not have today, such as an ending that no longer agrees.</summary>
    private static IEnumerable<string> NewRemarks(Workbench before, Workbench after)
    {
        var old = before.Bag.Sorted().Select(d => d.Code.Id + d.Message).ToHashSet();
        return after.Bag.Sorted().Where(d => !old.Contains(d.Code.Id + d.Message))
            .Select(d => $"Then proof says {d.Code.Id}: {d.Message}. {d.Hint}");
    }
}
