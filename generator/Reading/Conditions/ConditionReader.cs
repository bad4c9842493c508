using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Rules;

namespace CareSheets.Reading.Conditions;

/// <summary>
/// Conditions as people write them, <c>tank.lid is not tight</c>, to conditions that can be judged. What
/// can't be understood is told at its own words.
/// </summary>
internal sealed class ConditionReader(FieldCatalogue fields, DiagnosticBag bag)
{
    private readonly FigureConditionReader _figures = new(fields, bag);

    /// <summary>A list of conditions that must all hold. Parts that can't be read are left out, and told.</summary>
    public AllOf All(YamlNode? node) => new(node switch
    {
        YamlSequence list => [.. list.Items.Select(Read).OfType<Condition>()],
        null => [],
        _ => Read(node) is { } one ? [one] : [],
    });

    private Condition? Read(YamlNode node) => node switch
    {
        YamlMapping { Fields: [var field] } => Group(field),
        YamlScalar scalar => Sentence(new Sourced<string>(scalar.Text, scalar.Content)),
        _ => null, // the schema has told it
    };

    private Condition? Group(YamlField field) => field.Key.Text switch
    {
        "any of" => new AnyOf(All(field.Value).Parts),
        "all of" => All(field.Value),
        "none of" => new NoneOf(All(field.Value).Parts),
        _ => null,
    };

    private Condition? Sentence(Sourced<string> text)
    {
        var said = new ConditionText(text);
        if (said.Take("taxon") && Taxon(said) is { } taxon)
            return taxon;
        if (FigureConditionReader.PartOf(said) is { } part)
            return _figures.Read(said, part);
        if (said.TakeAny(fields.Paths) is not { } path)
            return NoField(said);
        var declared = fields.Find(path)!;
        if (said.Take("is not stated") || said.Take("are not stated"))
            return new NoneOf([new IsStated(path)]);
        if (said.Take("is stated") || said.Take("are stated"))
            return new IsStated(path);
        return declared.Kind switch
        {
            FieldKind.Figure => Unread(said, "lowest, highest or width of stands before a figure"),
            FieldKind.Count => _figures.Comparison(said, new FigurePart(path, RangePart.Highest), declared),
            FieldKind.Word or FieldKind.List or FieldKind.Text => Worded(said, declared),
        };
    }

    private static Condition? Taxon(ConditionText said) =>
        said.Take("is not") ? new NoneOf([new TaxonIs(said.Choices())])
        : said.Take("is") ? new TaxonIs(said.Choices()) : null;

    private Condition? Worded(ConditionText said, FieldDeclaration declared)
    {
        var path = declared.Path;
        if (said.Take("does not mention"))
            return new NoneOf([new Mentions(path, said.Choices())]);
        if (said.Take("mentions"))
            return new Mentions(path, said.Choices());
        if (said.Take("does not claim") || said.Take("do not claim"))
            return new NoneOf([new Claims(path, said.Choices())]);
        if (said.Take("claims") || said.Take("claim"))
            return new Claims(path, said.Choices());
        if (said.Take("does not say") || said.Take("do not say"))
            return new NoneOf([new Claims(path, said.Choices(), EvenIf: true)]);
        if (said.Take("says") || said.Take("say"))
            return new Claims(path, said.Choices(), EvenIf: true);
        if (declared.Kind == FieldKind.List && said.Take("lacks"))
            return new NoneOf([new ListHas(path, Known(said, declared))]);
        if (declared.Kind == FieldKind.List && said.Take("has"))
            return new ListHas(path, Known(said, declared));
        if (declared.Kind != FieldKind.List && said.Take("is not"))
            return new NoneOf([new WordIs(path, Known(said, declared))]);
        if (declared.Kind != FieldKind.List && said.Take("is"))
            return new WordIs(path, Known(said, declared));
        return Unread(said, declared.Kind == FieldKind.List
            ? "a list has, lacks, mentions or claims something" : "a word is, is not, mentions or claims something");
    }

    private IReadOnlyList<string> Known(ConditionText said, FieldDeclaration declared)
    {
        var words = said.Choices();
        foreach (var word in words.Where(w => declared.Words.Count > 0 && !declared.Words.Contains(w)))
            bag.Add(SchemaCodes.NotInList, said.Span, ("field", declared.Path), ("value", word),
                ("allowed", string.Join(", ", declared.Words)));
        return words;
    }

    private Condition? NoField(ConditionText said)
    {
        var first = said.FirstWord;
        var nearest = EditDistance.Nearest(first, fields.Paths.Order(StringComparer.Ordinal));
        bag.Add(ProofingCodes.NoField, said.Span, ("name", first),
            ("suggestion", nearest is null ? "Fields are written with their part, as in tank.lid." :
                $"Did you mean {nearest}?"));
        return null;
    }

    private Condition? Unread(ConditionText said, string reason)
    {
        bag.Add(ProofingCodes.NoCondition, said.Span, ("text", said.Whole), ("reason", reason));
        return null;
    }
}
