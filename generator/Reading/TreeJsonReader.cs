using System.Globalization;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace CareSheets.Reading;

/// <summary>
/// Replays a YAML tree as JSON tokens that carry the line and column of the YAML, so that the
/// schema's verdicts point into the file that the writer has open.
/// </summary>
internal sealed class TreeJsonReader : JsonReader, IJsonLineInfo
{
    private readonly IEnumerator<(JsonToken Token, object? Value, YamlNode At)> _tokens;

    private TreeJsonReader(YamlNode root) => _tokens = Tokens(root).GetEnumerator();

    public int LineNumber { get; private set; }

    public int LinePosition { get; private set; }

    public bool HasLineInfo() => true;

    public static JToken ToToken(YamlNode root)
    {
        using var reader = new TreeJsonReader(root);
        return JToken.Load(reader, new JsonLoadSettings { LineInfoHandling = LineInfoHandling.Load });
    }

    public override bool Read()
    {
        if (!_tokens.MoveNext())
            return false;
        var (token, value, at) = _tokens.Current;
        (LineNumber, LinePosition) = (at.Span.Start.Line, at.Span.Start.Column);
        SetToken(token, value);
        return true;
    }

    protected override void Dispose(bool disposing)
    {
        _tokens.Dispose();
        base.Dispose(disposing);
    }

    private static IEnumerable<(JsonToken, object?, YamlNode)> Tokens(YamlNode node)
    {
        switch (node)
        {
            case YamlMapping mapping:
                yield return (JsonToken.StartObject, null, node);
                foreach (var field in mapping.Fields)
                {
                    yield return (JsonToken.PropertyName, field.Key.Text, field.Key);
                    foreach (var token in Tokens(field.Value))
                        yield return token;
                }
                yield return (JsonToken.EndObject, null, node);
                break;
            case YamlSequence sequence:
                yield return (JsonToken.StartArray, null, node);
                foreach (var token in sequence.Items.SelectMany(Tokens))
                    yield return token;
                yield return (JsonToken.EndArray, null, node);
                break;
            case YamlScalar scalar:
                yield return Typed(scalar);
                break;
        }
    }

    /// <summary>
    /// Types by our own rules (YAML 1.2 core schema, narrowed): <c>NO</c>, <c>yes</c>, <c>012</c>,
    /// dates and ranges stay text.
    /// </summary>
    private static (JsonToken, object?, YamlNode) Typed(YamlScalar scalar)
    {
        if (scalar.IsNull)
            return (JsonToken.Null, null, scalar);
        if (scalar.IsPlain && scalar.Text is "true" or "True" or "TRUE" or "false" or "False" or "FALSE")
            return (JsonToken.Boolean, scalar.Text[0] is 't' or 'T', scalar);
        if (scalar.IsPlain && IsInteger(scalar.Text) &&
            long.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var integer))
            return (JsonToken.Integer, integer, scalar);
        if (scalar.IsPlain && IsDecimal(scalar.Text))
            return (JsonToken.Float, double.Parse(scalar.Text, CultureInfo.InvariantCulture), scalar);
        return (JsonToken.String, scalar.Text, scalar);
    }

    private static bool IsInteger(string text)
    {
        var digits = text.AsSpan().TrimStart("+-");
        return digits.Length is > 0 and <= 18 && text.Length - digits.Length <= 1 &&
            !digits.ContainsAnyExceptInRange('0', '9') && (digits[0] != '0' || digits.Length == 1);
    }

    private static bool IsDecimal(string text)
    {
        var point = text.IndexOf('.', StringComparison.Ordinal);
        return point > 0 && point < text.Length - 1 && text.Length <= 30 && IsInteger(text[..point]) &&
            !text.AsSpan(point + 1).ContainsAnyExceptInRange('0', '9');
    }
}
