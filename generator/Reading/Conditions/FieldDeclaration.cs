using CareSheets.Quantities;

namespace CareSheets.Reading.Conditions;

/// <summary>What a field of an entry can hold, as conditions may ask about it.</summary>
internal enum FieldKind
{
    Figure,
    Count,
    Word,
    List,

    /// <summary>Free text, one or several.</summary>
    Text,
}

/// <summary>A field of an entry as the schema declares it.</summary>
/// <param name="Dimension">Of a figure, else nothing.</param>
/// <param name="Words">The words it may hold; none where any may stand.</param>
internal sealed record FieldDeclaration(
    string Path, FieldKind Kind, Dimension? Dimension, IReadOnlyList<string> Words)
{
    private const string Keep = ".keep";

    /// <summary>The range to keep a fish at has the bare path, however it was written.</summary>
    public static string Bare(string path) =>
        path.EndsWith(Keep, StringComparison.Ordinal) ? path[..^Keep.Length] : path;
}
