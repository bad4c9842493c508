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

    public static bool Holds(string text, string phrase)
    {
        for (var at = Find(text, phrase, 0); at >= 0; at = Find(text, phrase, at + 1))
        {
            var end = at + phrase.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end])))
                return true;
        }
        return false;
    }

    private static int Find(string text, string phrase, int from) =>
        text.IndexOf(phrase, from, StringComparison.OrdinalIgnoreCase);
}
