using CareSheets.Rules.Wording;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>
/// A text, or one of several, says one of these phrases as advice of its own. What it forbids, doubts, or says of
/// others is not claimed. A text that is not stated claims nothing.
/// </summary>
/// <param name="EvenIf">Said under a condition it is claimed all the same: "if it grows, set it free".</param>
public sealed record Claims(string Field, IReadOnlyList<string> Phrases, bool EvenIf = false)
    : Condition
{
    private readonly IReadOnlyList<SpokenPhrase> _phrases = [.. Phrases.Select(SpokenPhrase.Of)];

    public override Truth Judge(EntryFields entry) =>
        Connective.Of(entry.Words(Field).Any(text => Affirmation.Find(text.Value, _phrases, EvenIf) is not null));

    public override IEnumerable<string> Fields => [Field];

    public override IEnumerable<Quote> Quotes(EntryFields entry) =>
        from text in entry.Words(Field)
        let said = Affirmation.Find(text.Value, _phrases, EvenIf)
        where said is not null
        select Mentions.QuoteOf(Field, text, said.Start, said.Length);
}
