using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>
/// A text, or one of several, holds at least one of these words or phrases, in any case, beginning and
/// ending where a word does. A text that is not stated mentions nothing.
/// </summary>
public sealed record Mentions(string Field, IReadOnlyList<string> Phrases) : Condition
{
    public override Truth Judge(EntryFields entry) =>
        Connective.Of(entry.Words(Field).Any(text => Phrases.Any(phrase => Holds(text.Value, phrase))));

    public override IEnumerable<string> Fields => [Field];

    public override IEnumerable<Quote> Quotes(EntryFields entry) =>
        from text in entry.Words(Field)
        from phrase in Phrases
        let at = PlaceOf(text.Value, phrase)
        where at >= 0
        select QuoteOf(Field, text, at, phrase.Length);

    public static bool Holds(string text, string phrase) => PlaceOf(text, phrase) >= 0;

    /// <summary>
    /// A text of one line is placed to the word, one with lines of its own by counting them; one that was folded
    /// only as a whole.
    /// </summary>
    public static Quote QuoteOf(string field, Sourced<string> text, int at, int length)
    {
        var words = text.Value.Substring(at, length);
        var line = text.Value.AsSpan(0, at).Count('\n');
        if (line == 0)
            return new Quote(field, words, text.Span.Start.Line == text.Span.End.Line
                ? text.Span.Part(at, length) : text.Span);
        var column = at - text.Value.LastIndexOf('\n', at);
        var start = new SourcePosition(text.Span.Start.Line + line, column);
        return new Quote(field, words, text.Span with { Start = start, End = start.Right(length) });
    }

    private static int PlaceOf(string text, string phrase)
    {
        for (var at = Find(text, phrase, 0); at >= 0; at = Find(text, phrase, at + 1))
        {
            var end = at + phrase.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end])))
                return at;
        }
        return -1;
    }

    private static int Find(string text, string phrase, int from) =>
        text.IndexOf(phrase, from, StringComparison.OrdinalIgnoreCase);
}
