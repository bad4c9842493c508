using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Reading.Conditions;

/// <summary>
/// Tree of an entry, or of a part of one that serves as an example, to its fields by path. Fields of an
/// entry that have the wrong form are left out, for the binder of entries has told them already.
/// </summary>
internal sealed class EntryFieldsBinder(FieldCatalogue catalogue)
{
    public EntryFields Bind(YamlMapping root, Sourced<string>? prose = null)
    {
        var values = new Dictionary<string, FieldValue>();
        Walk("", root, values);
        if (prose is not null)
            values["prose"] = new FieldWords([prose], prose.Span);
        return new EntryFields(values);
    }

    private void Walk(string prefix, YamlMapping mapping, Dictionary<string, FieldValue> values)
    {
        foreach (var field in mapping.Fields)
        {
            var path = prefix + field.Key.Text;
            if (field.Value is YamlMapping inner)
                Walk(path + ".", inner, values);
            else if (catalogue.Find(path) is { } declared && Value(field, declared) is { } value)
                values[FieldDeclaration.Bare(path)] = value;
        }
    }

    private static FieldValue? Value(YamlField field, FieldDeclaration declared) => declared.Kind switch
    {
        FieldKind.Figure => Figure(field, declared.Dimension!),
        FieldKind.Count => Fields.Integer(field.Value) is { } number ? new FieldCount(number) : null,
        FieldKind.Word or FieldKind.List or FieldKind.Text => Words(field),
    };

    private static FieldFigure? Figure(YamlField field, Dimension dimension)
    {
        if (Fields.Text(field.Value) is not { } text)
            return null;
        var bare = QuantityText.Parse(text.Value, dimension);
        var parsed = bare.Ok ? bare : QuantityText.Parse(text.Value, dimension, basisRequired: true);
        return parsed.Ok ? new FieldFigure(text.With(parsed.Value)) : null;
    }

    private static FieldWords? Words(YamlField field) => field.Value switch
    {
        YamlSequence list => new FieldWords(
            [.. list.Items.Select(Fields.Text).OfType<Sourced<string>>()], field.Key.Span),
        YamlScalar => Fields.Text(field.Value) is { } word ? new FieldWords([word], word.Span) : null,
        _ => null,
    };
}
