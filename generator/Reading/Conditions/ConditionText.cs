using CareSheets.Diagnostics;

namespace CareSheets.Reading.Conditions;

/// <summary>A condition's sentence, taken apart from its beginning.</summary>
internal sealed class ConditionText(Sourced<string> text)
{
    private int _at;

    public string Whole => text.Value;

    public SourceSpan Span => text.Span;

    public string FirstWord => Rest.Split(' ', 2)[0];

    public string Rest => text.Value[_at..].TrimStart();

    /// <summary>What is left, with its place, where the sentence stands in one line.</summary>
    public Sourced<string> RestInPlace
    {
        get
        {
            var rest = Rest;
            var index = text.Value.Length - rest.Length;
            return text.Span.Start.Line == text.Span.End.Line && rest.Length > 0
                ? new(rest, text.Span.Part(index, rest.Length)) : text with { Value = rest };
        }
    }

    /// <summary>Takes these words off the beginning, if they stand there in full.</summary>
    public bool Take(string words)
    {
        var rest = Rest;
        if (!rest.StartsWith(words, StringComparison.Ordinal) ||
            (rest.Length > words.Length && rest[words.Length] != ' '))
            return false;
        _at = text.Value.Length - rest.Length + words.Length;
        return true;
    }

    public string? TakeAny(IEnumerable<string> words) => words.FirstOrDefault(Take);

    /// <summary>The rest as alternatives: <c>this or that</c>.</summary>
    public IReadOnlyList<string> Choices() =>
        Rest.Split(" or ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
