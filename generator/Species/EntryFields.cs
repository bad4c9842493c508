using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>
/// What an entry states, field by field, under the very paths that its writer typed: <c>tank.lid</c>,
/// <c>care.temperature.prefers</c>. A care range without kinds is its <c>keep</c>, under the bare path.
/// Rules look here, so that a field added to the schema can be ruled upon at once.
/// </summary>
public sealed class EntryFields(IReadOnlyDictionary<string, FieldValue> values)
{
    public static readonly EntryFields None = new(new Dictionary<string, FieldValue>());

    /// <summary>The ending that stands for what a fish likes best: <c>prefers</c>, else <c>keep</c>.</summary>
    public const string Best = ".best";

    /// <summary>Prose and cautions together: all that readers are told in sentences.</summary>
    public const string AllWords = "words";

    public FieldValue? this[string path] => values.GetValueOrDefault(path) ??
        (path.EndsWith(Best, StringComparison.Ordinal) ? BestOf(path[..^Best.Length])
            : path == AllWords ? Together(Words("prose"), Words("cautions")) : null);

    /// <summary>The words of a field, in the writer's order; none when it is not stated or holds figures.</summary>
    public IReadOnlyList<Sourced<string>> Words(string path) => this[path] is FieldWords words ? words.Words : [];

    /// <summary>Order, family, genus and species, as far as they are stated.</summary>
    public IEnumerable<string> Taxa => Words("order").Concat(Words("family")).Concat(Words("scientificName"))
        .Select(w => w.Value).SelectMany(name => name.Contains(' ', StringComparison.Ordinal)
            ? new[] { name[..name.IndexOf(' ', StringComparison.Ordinal)], name } : [name]);

    /// <summary>These fields and others, which take the place of fields with the same path.</summary>
    public EntryFields With(IEnumerable<KeyValuePair<string, FieldValue>> others)
    {
        var all = new Dictionary<string, FieldValue>(values);
        foreach (var (path, value) in others)
            all[path] = value;
        return new EntryFields(all);
    }

    private FieldValue? BestOf(string range) =>
        values.GetValueOrDefault(range + ".prefers") ?? values.GetValueOrDefault(range);

    private static FieldWords? Together(IReadOnlyList<Sourced<string>> one, IReadOnlyList<Sourced<string>> other) =>
        one.Concat(other).FirstOrDefault() is { } first ? new FieldWords([.. one, .. other], first.Span) : null;
}
