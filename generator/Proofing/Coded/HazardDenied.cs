using CareSheets.Diagnostics;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No caution and no sentence of the prose denies or doubts a hazard to people that the entry inherits. Page and
/// papers tell the hazard all the same; the reader would find both. What only leaves it in doubt is told of a caution
/// alone.
/// </summary>
internal sealed class HazardDenied(IReadOnlyList<Hazard> hazards) : ICodedRule
{
    public static readonly CodedText Text = new(
        "hazard-is-not-denied", Severity.Warning,
        "It denies or doubts a hazard that page and papers warn of all the same",
        "Take the denial out, or tell the hazard in words of your own, with what to do.",
        "That a species is harmless is for those to say who have tested it", "common practice, no source");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry) =>
        from hazard in CautionsOf.Inherited(entry, hazards)
        from text in Texts(entry, hazard)
        let denied = hazard.DeniedBy(text.Words.Value) ??
            (text.Field == "cautions" ? hazard.DoubtedBy(text.Words.Value) : null)
        where denied is not null
        let quote = Mentions.QuoteOf(text.Field, text.Words, denied.Clause.Start, denied.Clause.Length)
        select Text.Breach(entry, quote.Span, text.Field, $"“{Excerpt.Of(quote.Words)}”",
            new RelatedSpan(hazard.Name.Span, $"the hazard {hazard.Name.Value} is here"));

    private static IEnumerable<(string Field, Sourced<string> Words)> Texts(Entry entry, Hazard hazard)
    {
        var fields = hazard.IsForHands ? new[] { "cautions", "prose" } : [];
        return fields.SelectMany(field => entry.Fields.Words(field).Select(words => (field, words)));
    }
}
