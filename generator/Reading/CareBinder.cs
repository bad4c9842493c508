using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// The care part of an entry: every range and word that the schema declares, whatever they are.
/// </summary>
internal sealed class CareBinder(EntrySchema schema, QuantityBinder quantities, DiagnosticBag bag)
{
    private static readonly IReadOnlyList<(string Field, RangeKind Kind)> KindFields =
    [
        ("keep", RangeKind.Keep), ("prefers", RangeKind.Prefers), ("wild", RangeKind.Wild),
        ("survives", RangeKind.Survives), ("breeding", RangeKind.Breeding),
    ];

    public IReadOnlyList<CareRange> Ranges(Fields care, Evidence byDefault) =>
    [
        .. schema.Ranges
            .Select(declared => Range(care, declared, byDefault))
            .Where(range => range.Kinds.Count > 0),
    ];

    public IReadOnlyList<CareWord> Words(Fields care) =>
    [
        .. from declared in schema.Words
           let word = care.Text(declared.Field)
           where word is not null && declared.Words.Contains(word.Value)
           select new CareWord(declared, word),
    ];

    private CareRange Range(Fields care, CareRangeDeclaration declared, Evidence byDefault)
    {
        var path = $"care.{declared.Field}";
        var quantity = new QuantityDeclaration(declared.Dimension, declared.Plausible, BasisRequired: false);
        if (care.Node(declared.Field) is not YamlMapping)
        {
            var keep = quantities.Bind(care.Text(declared.Field), quantity, path);
            return new CareRange(declared, keep is null ? [] : [new(RangeKind.Keep, keep, byDefault)]);
        }
        var inner = care.Inner(declared.Field);
        var kinds =
            from field in KindFields
            let range = quantities.Bind(inner.Text(field.Field), quantity, $"{path}.{field.Field}")
            where range is not null
            select new KindedRange(field.Kind, range, EvidenceOf(inner.Node("evidence"), field.Field) ?? byDefault);
        var bound = new CareRange(declared, [.. kinds]);
        CheckOrder(bound, path);
        return bound;
    }

    private static Evidence? EvidenceOf(YamlNode? node, string kind) => node switch
    {
        YamlMapping mapping when mapping["like"] is YamlScalar like =>
            new Evidence(EvidenceKind.Like, like.Text, like.Content),
        YamlMapping mapping => EvidenceWord.Read(Fields.Text(mapping[kind])),
        _ => EvidenceWord.Read(Fields.Text(node)),
    };

    private void CheckOrder(CareRange range, string path)
    {
        CheckWithin(range, RangeKind.Prefers, RangeKind.Keep, path);
        CheckWithin(range, RangeKind.Keep, RangeKind.Survives, path);
        CheckWithin(range, RangeKind.Prefers, RangeKind.Survives, path);
        CheckWithin(range, RangeKind.Breeding, RangeKind.Survives, path);
    }

    private void CheckWithin(CareRange range, RangeKind inner, RangeKind outer, string path)
    {
        if (range.Of(inner)?.Range is not { } small || range.Of(outer)?.Range is not { } large ||
            Encloses(large.Value, small.Value))
            return;
        bag.Add(Diagnostic.Of(QuantityCodes.KindsDisagree, small.Span,
            ("inner", NameOf(inner)), ("outer", NameOf(outer)),
            ("innerText", small.Value.Text), ("outerText", large.Value.Text))
            .At($"{path}.{NameOf(inner)}")
            .With([new RelatedSpan(large.Span, $"{NameOf(outer)} is here")]));
    }

    /// <summary>An open end inside lies within only an open end outside.</summary>
    private static bool Encloses(StatedRange outer, StatedRange inner) =>
        QuantityBinder.IsWithin(inner, outer) &&
        (outer.Low is null || inner.Low is not null) && (outer.High is null || inner.High is not null);

    private static string NameOf(RangeKind kind) => KindFields.First(k => k.Kind == kind).Field;
}
