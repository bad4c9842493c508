using CareSheets.Diagnostics;
using CareSheets.Regulations;

namespace CareSheets.Reading;

/// <summary>Tree of a file of regulations to the list of law.</summary>
internal sealed class RegulationBinder(DiagnosticBag bag)
{
    /// <summary>Nothing when something required is missing; the schema has said so.</summary>
    public RegulationList? Bind(string key, YamlMapping root)
    {
        var fields = new Fields(root);
        return fields.Text("title") is { } title && fields.Text("authority") is { } authority &&
            fields.Text("territory") is { } territory && LawWords.Extent(fields.Text("extent")) is { } extent &&
            LawWords.Evidence(fields.Text("evidence")) is { } evidence &&
            fields.Integer("reviewMonths") is { } months && fields.Text("source") is { } source
            ? new RegulationList(
                key, title, authority.Value, territory.Value, Plain(fields.Texts("applies")), extent, evidence,
                fields.Text("edition")?.Value, LawWords.Day(fields.Text("checked"), bag), months.Value,
                source.Value, fields.Text("about")?.Value, Rules(fields))
            : null;
    }

    private IReadOnlyList<RegulationRule> Rules(Fields fields) =>
        fields.Node("rules") is not YamlSequence { Items: var items }
            ? []
            : [.. items.OfType<YamlMapping>().Select(i => Rule(new Fields(i))).OfType<RegulationRule>()];

    private RegulationRule? Rule(Fields fields)
    {
        if (fields.Text("name") is not { } name || LawWords.Rank(fields.Text("rank")) is not { } rank ||
            LawWords.Effect(fields.Text("effect")) is not { } effect)
            return null;
        CheckRank(name, rank);
        return new RegulationRule(
            rank, name, Plain(fields.Texts("also")), Plain(fields.Texts("genera")), Plain(fields.Texts("except")),
            fields.Text("exceptionsUnknown")?.Value == "true", effect,
            fields.Text("clause")?.Value ?? "", fields.Text("note")?.Value);
    }

    /// <summary>A genus written where a species is meant would match nothing, for ever and unseen.</summary>
    private void CheckRank(Sourced<string> name, RuleRank rank)
    {
        var (fits, form) = rank switch
        {
            RuleRank.Species => (name.Value.Contains(' ', StringComparison.Ordinal), "genus and epithet"),
            RuleRank.Genus => (IsOneWord(name.Value) && !IsFamily(name.Value), "one word, as in Channa"),
            RuleRank.Family => (IsFamily(name.Value), "one word that ends in -idae"),
            RuleRank.Order => (IsOneWord(name.Value) && !IsFamily(name.Value), "one word, as in Siluriformes"),
        };
        if (!fits)
            bag.Add(RegulationCodes.WrongRank, name.Span,
                ("name", name.Value), ("rank", LawWords.Of(rank)), ("form", form));
    }

    private static bool IsOneWord(string name) => !name.Contains(' ', StringComparison.Ordinal);

    private static bool IsFamily(string name) => IsOneWord(name) && name.EndsWith("idae", StringComparison.Ordinal);

    private static IReadOnlyList<string> Plain(IReadOnlyList<Sourced<string>> texts) => [.. texts.Select(t => t.Value)];
}
