using CareSheets.Names;

namespace CareSheets.Relatives;

/// <summary>
/// What relatives say of a species that has no entry yet, as the beginning of one. Origin, laws and
/// venom are not in it: those are never inferred.
/// </summary>
/// <param name="Missing">Fields that relatives can't give, each with a word on what belongs there.</param>
public sealed record Draft(
    ScientificName Name, NewPlace Place, IReadOnlyList<DraftValue> Values, IReadOnlyList<string> Missing)
{
    public DraftValue? At(string path) => Values.FirstOrDefault(v => v.Path == path);

    public IEnumerable<DraftValue> Under(string part) =>
        Values.Where(v => v.Path.StartsWith(part + ".", StringComparison.Ordinal));
}

/// <summary>One value of a draft.</summary>
/// <param name="Path">As in an entry: <c>care.temperature</c>.</param>
/// <param name="Text">As a writer would type it; empty where relatives can't tell.</param>
/// <param name="Comment">Who said so, and how sure they are.</param>
public sealed record DraftValue(string Path, string Text, string Comment);
