using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Regulations;

namespace CareSheets.Reading;

/// <summary>The words that a person types in the files of law. Another word has been told by the schema.</summary>
internal static class LawWords
{
    public static ListExtent? Extent(Sourced<string>? word) => word?.Value switch
    {
        "whole" => ListExtent.Whole,
        "part" => ListExtent.Part,
        "none" => ListExtent.None,
        _ => null,
    };

    public static LegalEvidence? Evidence(Sourced<string>? word) => word?.Value switch
    {
        "seen" => LegalEvidence.Seen,
        "secondary" => LegalEvidence.Secondary,
        "from memory" => LegalEvidence.FromMemory,
        _ => null,
    };

    public static RuleRank? Rank(Sourced<string>? word) => word?.Value switch
    {
        "species" => RuleRank.Species,
        "genus" => RuleRank.Genus,
        "family" => RuleRank.Family,
        "order" => RuleRank.Order,
        _ => null,
    };

    public static string Of(RuleRank rank) => rank switch
    {
        RuleRank.Species => "species",
        RuleRank.Genus => "genus",
        RuleRank.Family => "family",
        RuleRank.Order => "order",
    };

    public static RegulationEffect? Effect(Sourced<string>? word) => word?.Value switch
    {
        "prohibited" => RegulationEffect.Prohibited,
        "permit" => RegulationEffect.Permit,
        "trade" => RegulationEffect.Trade,
        _ => null,
    };

    /// <summary>Topics are written as people say them: <c>life span</c> for LifeSpan.</summary>
    public static IReadOnlyList<AdviceTopic> Topics(IReadOnlyList<Sourced<string>> words) =>
    [
        .. from word in words
           let name = word.Value.Replace(" ", "", StringComparison.Ordinal)
           from topic in Enum.GetValues<AdviceTopic>()
           where string.Equals(topic.ToString(), name, StringComparison.OrdinalIgnoreCase)
           select topic,
    ];

    public static Sourced<DateOnly>? Day(Sourced<string>? text, DiagnosticBag bag)
    {
        if (text is null)
            return null;
        if (DateOnly.TryParseExact(
            text.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return text.With(day);
        if (text.Value is [_, _, _, _, '-', _, _, '-', _, _])
            bag.Add(Diagnostic.Of(SchemaCodes.NoSuchDay, text.Span, ("value", text.Value)).At("checked"));
        return null;
    }
}
