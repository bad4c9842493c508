using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Names;
using NJsonSchema;
using NJsonSchema.Validation;

namespace CareSheets.Reading;

/// <summary>
/// Checks a YAML tree against its schema and says in sentences what NJsonSchema says in kinds and
/// paths.
/// </summary>
internal sealed class SchemaCheck(ContentSchema schema, DiagnosticBag bag)
{
    public void Check(YamlMapping root)
    {
        var places = new PlaceIndex(root);
        var told = new HashSet<(DiagnosticCode, SourceSpan)>(); // a value can break two clauses that say one thing
        foreach (var error in SchemaErrors.Flatten(schema.Schema.Validate(TreeJsonReader.ToToken(root))))
        {
            var path = SchemaErrors.PathOf(error);
            var node = places.At(error.LineNumber, error.LinePosition);
            if (IsTypeError(error.Kind) && path.EndsWith(']') && YamlPath.Find(root, path) is YamlMapping parted)
                bag.Add(Parted(parted, path).At(path));
            else
                Add(Describe(error, node, path.Length == 0 ? "The front matter" : path).At(path));
        }

        void Add(Diagnostic found)
        {
            if (found.Code != SchemaCodes.WrongForm || told.Add((found.Code, found.Span)))
                bag.Add(found);
        }
    }

    /// <summary>A text in which a colon made a field of its first words.</summary>
    private static Diagnostic Parted(YamlMapping node, string path)
    {
        var (key, value) = (node.Fields[0].Key, node.Fields[0].Value as YamlScalar);
        return Diagnostic.Of(SchemaCodes.WrongType, key.Span, ("field", path),
            ("actual", "fields of its own, for it has a colon"), ("expected", "text"),
            ("form", $"Put quotes round the text: \"{key.Text}: {Excerpt.Of(value?.Text ?? "")}\""));
    }

    private Diagnostic Describe(ValidationError error, YamlNode node, string field)
    {
        var about = error.Schema.Description ?? "";
        var value = node is YamlScalar scalar ? Excerpt.Of(scalar.Text) : "";
        Diagnostic Of(DiagnosticCode code, params (string, string)[] values) =>
            Diagnostic.Of(code, node.Span, [
                ("field", field), ("about", about), ("value", value), ("form", FormOf(error, field)), .. values]);

        return error.Kind switch
        {
            ValidationErrorKind.PropertyRequired => Of(SchemaCodes.Missing),
            ValidationErrorKind.NoAdditionalPropertiesAllowed or ValidationErrorKind.AdditionalPropertiesNotValid =>
                Of(SchemaCodes.Unknown, ("suggestion", SuggestField(error))),
            _ when node is YamlScalar { IsNull: true } => Of(SchemaCodes.NoValue),
            ValidationErrorKind.NotInEnumeration => Of(SchemaCodes.NotInList, ("allowed", Allowed(error.Schema))),
            ValidationErrorKind.PatternMismatch or ValidationErrorKind.StringTooShort =>
                Of(SchemaCodes.WrongForm, ("form", Form(error.Schema))),
            ValidationErrorKind.TooFewItems or ValidationErrorKind.TooManyItems or
            ValidationErrorKind.TooFewProperties => Of(SchemaCodes.WrongCount, Counts(error, node)),
            ValidationErrorKind.ItemsNotUnique => Of(SchemaCodes.Twice),
            ValidationErrorKind.NumberTooSmall or ValidationErrorKind.NumberTooBig or
            ValidationErrorKind.IntegerTooBig => Of(SchemaCodes.OutOfBounds, ("expected", Bounds(error.Schema))),
            _ when IsTypeError(error.Kind) =>
                Of(SchemaCodes.WrongType, ("actual", Actual(node)), ("expected", Expected(error))),
            _ => Of(SchemaCodes.Other, ("kind", error.Kind.ToString())),
        };
    }

    private static bool IsTypeError(ValidationErrorKind kind) => kind
        is ValidationErrorKind.StringExpected or ValidationErrorKind.NumberExpected
        or ValidationErrorKind.IntegerExpected or ValidationErrorKind.BooleanExpected
        or ValidationErrorKind.ObjectExpected or ValidationErrorKind.ArrayExpected
        or ValidationErrorKind.NullExpected or ValidationErrorKind.NoTypeValidates;

    /// <summary>Where the field stands in a definition that many share, the schema of the error knows of it.</summary>
    private string FormOf(ValidationError error, string field)
    {
        if (ExpectedForm.Of(schema, field) is { Length: > 0 } form)
            return form;
        return error.Kind == ValidationErrorKind.PropertyRequired &&
            error.Schema.ActualProperties.TryGetValue(error.Property ?? "", out var missing)
                ? missing.Description ?? "" : error.Schema.Description ?? "";
    }

    private static string SuggestField(ValidationError error)
    {
        var known = error.Schema.ActualProperties.Keys.Order(StringComparer.Ordinal).ToList();
        if (known.Count == 0)
            return $"Names here are {Form(error.Schema, "lower-case letters, digits and hyphens")}.";
        return EditDistance.Nearest(error.Property ?? "", known) is { } nearest
            ? $"Did you mean {nearest}?"
            : $"Fields here: {string.Join(", ", known)}.";
    }

    private static string Allowed(JsonSchema declared) =>
        string.Join(", ", declared.Enumeration.Select(v => Convert.ToString(v, CultureInfo.InvariantCulture)));

    private static string Form(JsonSchema declared, string otherwise = "some text") =>
        declared.ExtensionData is { } own && own.TryGetValue("x-form", out var form) && form is string text
            ? text : otherwise;

    private static (string, string)[] Counts(ValidationError error, YamlNode node)
    {
        var actual = node switch
        {
            YamlSequence sequence => sequence.Items.Count,
            YamlMapping mapping => mapping.Fields.Count,
            _ => 0,
        };
        var least = Math.Max(error.Schema.MinItems, error.Schema.MinProperties);
        return
        [
            ("actual", actual == 0 ? "nothing" : Number(actual)),
            ("expected", actual < least ? $"at least {Number(least)}" : $"at most {Number(error.Schema.MaxItems)}"),
        ];
    }

    private static string Bounds(JsonSchema declared) => (declared.Minimum, declared.Maximum) switch
    {
        ({ } low, { } high) => string.Create(CultureInfo.InvariantCulture, $"from {low} to {high}"),
        ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"at least {low}"),
        (null, { } high) => string.Create(CultureInfo.InvariantCulture, $"at most {high}"),
        _ => "within its bounds",
    };

    private static string Actual(YamlNode node) => node switch
    {
        YamlMapping => "fields of its own",
        YamlSequence => "a list",
        YamlScalar scalar => TreeJsonReader.ToToken(scalar).Type switch
        {
            Newtonsoft.Json.Linq.JTokenType.Integer or Newtonsoft.Json.Linq.JTokenType.Float =>
                $"the number {Excerpt.Of(scalar.Text)}",
            _ => $"the text “{Excerpt.Of(scalar.Text)}”",
        },
        _ => "something else",
    };

    private static string Expected(ValidationError error)
    {
        var type = error.Schema.Type;
        (JsonObjectType, string)[] names =
        [
            (JsonObjectType.String, "text"), (JsonObjectType.Integer, "a whole number"),
            (JsonObjectType.Number, "a number"), (JsonObjectType.Array, "a list, as in [one, two]"),
            (JsonObjectType.Object, "fields, as in { name: value }"), (JsonObjectType.Boolean, "true or false"),
        ];
        var found = names.Where(n => type.HasFlag(n.Item1)).Select(n => n.Item2).ToList();
        return found.Count == 0 ? "something else" : string.Join(" or ", found);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
