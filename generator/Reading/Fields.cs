using System.Globalization;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>
/// The fields of a mapping, read without complaint: what has the wrong form is left out, for the
/// schema has already said so.
/// </summary>
internal sealed class Fields(YamlMapping? mapping)
{
    public IEnumerable<YamlField> All => mapping?.Fields ?? [];

    public YamlNode? Node(string name) => mapping?[name];

    public Fields Inner(string name) => new(Node(name) as YamlMapping);

    public Sourced<string>? Text(string name) => Text(Node(name));

    public IReadOnlyList<Sourced<string>> Texts(string name) => Node(name) is YamlSequence sequence
        ? [.. sequence.Items.Select(Text).OfType<Sourced<string>>()]
        : [];

    public Sourced<int>? Integer(string name) => Integer(Node(name));

    public static Sourced<int>? Integer(YamlNode? node) =>
        Text(node) is { } text && int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var n)
            ? text.With(n)
            : null;

    public static Sourced<string>? Text(YamlNode? node) =>
        node is YamlScalar { IsNull: false } scalar ? new Sourced<string>(scalar.Text, scalar.Content) : null;
}
