using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>
/// What is kept of an arrival when its list is read anew. Of a line that is still the same, everything stays as
/// people left it; only which entry it is taken for is read again, unless a person has said so by hand. A batch that
/// a person added or worked on stays although the list has no such line.
/// </summary>
public sealed class CarriedOver
{
    private static readonly string[] Matched = ["entry", "taken", "perhaps"];

    private readonly Dictionary<int, Batch> _byLine = [];

    /// <param name="before">The arrival as it is; nothing where there is none yet.</param>
    /// <param name="list">The list as it is read now.</param>
    public CarriedOver(Arrival? before, PackingList list)
    {
        Before = before;
        var left = (before?.Batches ?? []).ToList();
        foreach (var line in list.Lines)
            Pair(line, left.Find(b => b.Line == line.Line.Line && b.Said.Value == line.Line.Said), left);
        var open = list.Lines.Where(l => !_byLine.ContainsKey(l.Line.Line)).ToList();
        foreach (var line in open.Where(l => open.Count(o => o.Line.Said == l.Line.Said) == 1))
            Pair(line, left.FindAll(b => b.Said.Value == line.Line.Said) is [var moved] ? moved : null, left);
        Kept = [.. left.Where(IsOfPeople)];
        Gone = [.. left.Except(Kept)];
    }

    public Arrival? Before { get; }

    /// <summary>Batches of people that no line of the list stands for.</summary>
    public IReadOnlyList<Batch> Kept { get; }

    /// <summary>Batches whose line stands in the list no more, and to which nobody has added anything.</summary>
    public IReadOnlyList<Batch> Gone { get; }

    /// <summary>Fields of a line as they are to be written.</summary>
    internal Dictionary<string, string> Fields(MatchedLine line)
    {
        var read = BatchFields.Of(line);
        if (!_byLine.TryGetValue(line.Line.Line, out var batch))
            return read;
        var fields = BatchFields.Of(batch);
        fields["line"] = read["line"];
        if (!IsByHand(batch) || line.Taken == NameTaken.Answered)
        {
            foreach (var name in Matched)
            {
                fields.Remove(name);
                if (read.TryGetValue(name, out var now))
                    fields[name] = now;
            }
        }
        return fields;
    }

    /// <summary>What of a line is not as the list has it, in words; empty where all is.</summary>
    public string Told(MatchedLine line)
    {
        if (!_byLine.ContainsKey(line.Line.Line))
            return "";
        var (read, fields) = (BatchFields.Of(line), Fields(line));
        return string.Join(", ", BatchFields.Order.Where(name => !Matched.Contains(name))
            .Select(name => Told(name, read.GetValueOrDefault(name), fields.GetValueOrDefault(name)))
            .Where(told => told.Length > 0));
    }

    private static string Told(string name, string? read, string? kept) =>
        read?.Trim('"') == kept?.Trim('"') ? ""
        : read is null ? name
        : kept is null ? $"no {name} (read as {read})"
        : $"{name} {kept} (read as {read})";

    /// <summary>An entry without a word on why it was taken was typed by a person too.</summary>
    private static bool IsByHand(Batch batch) =>
        batch is { Entry: not null, Taken: NameTaken.ByHand or null };

    /// <summary>Somebody has counted, housed or named them; and the program gives each of its lines a number.</summary>
    private static bool IsOfPeople(Batch batch) => IsByHand(batch) || batch.Losses.Count > 0 ||
        batch is { Line: null } or { Alive: not null } or { Tank: not null } or { System: not null } or
        { Price: not null } or { Days: not null } or { Water: not null } or { Cause: not null } or
        { Gone: not null };

    private void Pair(MatchedLine line, Batch? batch, List<Batch> left)
    {
        if (batch is null || !left.Remove(batch))
            return;
        _byLine[line.Line.Line] = batch;
    }
}
