using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No caution and no sentence of the prose tells a dose: an amount such as 5 mg or two drops in a sentence about a
/// treatment, a named medicine or salt, half or double a dose, or heat as a cure. A net by words, with holes.
/// </summary>
internal sealed class DoseTold : ICodedRule
{
    public static readonly CodedText Text = new(
        "no-dose-is-told", Severity.Warning,
        "The words tell a dose", "Take it out: a vet who treats fish decides on medicine and dose.",
        "A dose depends on the illness, the fish and the water, and a wrong one kills", "common practice, no source");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from text in entry.Fields.Words(EntryFields.AllWords)
        from Match sentence in DoseWords.Sentence().Matches(text.Value)
        let amount = Dose(sentence.Value)
        where amount is not null
        let quote = Mentions.QuoteOf(EntryFields.AllWords, text, sentence.Index + amount.Index, amount.Length)
        select Text.Breach(entry, quote.Span, "", $"“{quote.Words}”");

    /// <summary>The first words of a sentence that say how much; nothing where it tells no dose.</summary>
    private static Match? Dose(string sentence)
    {
        if (DoseWords.Treatment().IsMatch(sentence) && Found(DoseWords.Amount(), sentence) is { } amount)
            return amount;
        if (DoseWords.Salt().IsMatch(sentence) && Found(DoseWords.Amount(), sentence) is { } salt &&
            !(DoseWords.Sea().IsMatch(sentence) && DoseWords.IsOfWater(salt.Value)))
            return salt;
        if (Found(DoseWords.PartOfADose(), sentence) is { } part && !DoseWords.Harm().IsMatch(sentence))
            return part;
        return DoseWords.Warming().IsMatch(sentence) && DoseWords.Cure().IsMatch(sentence)
            ? Found(DoseWords.Warmth(), sentence) : null;
    }

    private static Match? Found(Regex pattern, string sentence) =>
        pattern.Match(sentence) is { Success: true } match ? match : null;
}
