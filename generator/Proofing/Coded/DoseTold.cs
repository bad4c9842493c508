using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No caution and no sentence of the prose tells a dose of medicine: an amount such as 5 mg or two drops in a
/// sentence about a treatment.
/// </summary>
internal sealed partial class DoseTold : ICodedRule
{
    public static readonly CodedText Text = new(
        "no-dose-is-told", Severity.Warning,
        "The words tell a dose", "Take it out: a vet who treats fish decides on medicine and dose.",
        "A dose depends on the illness, the fish and the water, and a wrong one kills", "common practice, no source");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from text in entry.Fields.Words(EntryFields.AllWords)
        from Match sentence in Sentence().Matches(text.Value)
        let amount = Amount().Match(sentence.Value)
        where amount.Success && Treatment().IsMatch(sentence.Value)
        let quote = Mentions.QuoteOf(EntryFields.AllWords, text, sentence.Index + amount.Index, amount.Length)
        select Text.Breach(entry, quote.Span, "", $"“{quote.Words}”");

    [GeneratedRegex(@"[^.!?;]+(?:\.\d[^.!?;]*)*", RegexOptions.NonBacktracking)]
    private static partial Regex Sentence();

    [GeneratedRegex(
        @"\b(\d[\d.,]*|one|two|three|four|five|six|ten|half|an?)[\s ]*" +
        @"(mg|g|ml|millilitres?|grams?|milligrams?|drops?|teaspoons?|tablespoons?|spoonfuls?|capsules?)\b",
        RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex Amount();

    [GeneratedRegex(
        @"\b(treat(s|ed|ing|ment|ments)?|doses?|dosed|dosing|medicines?|medicat(e|ed|ion|ions)|cures?|cured|" +
        @"dewormers?|wormers?|worming|antibiotics?|parasites?|remedy|remedies|praziquantel|levamisole|" +
        @"flubendazole|fenbendazole|metronidazole|ivermectin|malachite|methylene|formalin|copper|" +
        @"salt (bath|dip)|white spot|velvet|fungus|ich)\b",
        RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex Treatment();
}
