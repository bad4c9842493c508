using CareSheets.Diagnostics;
using CareSheets.Names;

namespace CareSheets.Reading.Conditions;

/// <summary>
/// Checks the example entries of rules, which are parts of entries: each field must be one of an entry's,
/// and say what it can say there.
/// </summary>
internal sealed class ExampleReader(EntrySchema schema, DiagnosticBag bag)
{
    private readonly QuantityBinder _quantities = new(bag);

    public void Check(YamlMapping example) => Walk("", example);

    private void Walk(string prefix, YamlMapping mapping)
    {
        foreach (var field in mapping.Fields)
        {
            var path = prefix + field.Key.Text;
            if (field.Value is YamlMapping inner)
                Walk(path + ".", inner);
            else if (schema.Catalogue.Find(path) is { } declared)
                Check(field, declared);
            else
                NoField(field.Key.Span, path);
        }
    }

    private void Check(YamlField field, FieldDeclaration declared)
    {
        if (declared.Kind == FieldKind.Figure && Fields.Text(field.Value) is { } text)
        {
            var basis = declared.Path == "adult.length";
            var any = Quantities.QuantityText.Parse(declared.Dimension!.Example, declared.Dimension).Value
                with
            { Low = null, High = null };
            _quantities.Bind(text, new QuantityDeclaration(declared.Dimension, any, basis), declared.Path);
        }
        foreach (var word in Words(field.Value).Where(_ => declared.Kind is FieldKind.Word or FieldKind.List)
            .Where(w => !declared.Words.Contains(w.Value)))
            bag.Add(SchemaCodes.NotInList, word.Span, ("field", declared.Path), ("value", word.Value),
                ("allowed", string.Join(", ", declared.Words)));
    }

    private static IEnumerable<Sourced<string>> Words(YamlNode node) => node switch
    {
        YamlSequence list => list.Items.Select(Fields.Text).OfType<Sourced<string>>(),
        _ => Fields.Text(node) is { } word ? [word] : [],
    };

    private void NoField(SourceSpan span, string path)
    {
        var nearest = EditDistance.Nearest(path, schema.Catalogue.Paths.Order(StringComparer.Ordinal));
        bag.Add(ProofingCodes.NoField, span, ("name", path), ("suggestion",
            nearest is null ? "Fields of an example are those of an entry." : $"Did you mean {nearest}?"));
    }
}
