using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>A value of a YAML file with its place. Trees hold no anchors, tags or cycles.</summary>
internal abstract record YamlNode(SourceSpan Span);

/// <summary>One value. Only plain ones, without quotes, can be numbers or empty.</summary>
internal sealed record YamlScalar(string Text, bool IsPlain, SourceSpan Span) : YamlNode(Span)
{
    /// <summary>Of a text that begins below a <c>&gt;-</c> or <c>|</c>: where its lines are.</summary>
    public SourceSpan? Lines { get; init; }

    /// <summary>The text itself, without its opening quote or the sign that stands above it.</summary>
    public SourceSpan Content => Lines ?? (IsPlain ? Span : Span with { Start = Span.Start.Right(1) });

    /// <summary>Empty, <c>~</c> or <c>null</c> without quotes (YAML 1.2 core schema).</summary>
    public bool IsNull => IsPlain && (Text is "" or "~" or "null" or "Null" or "NULL");
}

internal sealed record YamlSequence(IReadOnlyList<YamlNode> Items, SourceSpan Span) : YamlNode(Span);

internal sealed record YamlField(YamlScalar Key, YamlNode Value);

internal sealed record YamlMapping(IReadOnlyList<YamlField> Fields, SourceSpan Span) : YamlNode(Span)
{
    public YamlNode? this[string key] => Fields.FirstOrDefault(f => f.Key.Text == key)?.Value;
}
