using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>Trees of the files that hold one record for each key: references and glossary.</summary>
internal static class KeyedBinder
{
    public static IReadOnlyList<Reference> References(YamlMapping root) =>
        [.. Records(root).Select(Reference).OfType<Reference>()];

    public static IReadOnlyList<GlossaryTerm> Glossary(YamlMapping root) =>
        [.. Records(root).Select(Term).OfType<GlossaryTerm>()];

    private static IEnumerable<(Sourced<string> Key, Fields Fields)> Records(YamlMapping root) =>
        from field in root.Fields
        where field.Value is YamlMapping
        select (new Sourced<string>(field.Key.Text, field.Key.Span), new Fields((YamlMapping)field.Value));

    private static Reference? Reference((Sourced<string> Key, Fields Fields) record)
    {
        var (key, fields) = record;
        return fields.Text("author") is { } author && fields.Integer("year") is { } year &&
            fields.Text("title") is { } title
            ? new Reference(key, author.Value, year.Value, title.Value, fields.Text("container")?.Value,
                fields.Text("pages")?.Value, fields.Text("doi")?.Value, fields.Text("note")?.Value)
            : null;
    }

    private static GlossaryTerm? Term((Sourced<string> Key, Fields Fields) record)
    {
        var (key, fields) = record;
        return fields.Text("term") is { } term && fields.Text("meaning") is { } meaning
            ? new GlossaryTerm(key, term.Value, meaning.Value, fields.Texts("see"))
            : null;
    }
}
