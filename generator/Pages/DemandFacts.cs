using CareSheets.Proofing;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>What a species asks for, as lines with the figures on which each stands.</summary>
internal sealed class DemandFacts(Site site)
{
    /// <summary>Names of fields whose words the theme explains under another name.</summary>
    private static readonly Dictionary<string, string> Groups = new()
    {
        ["own kind"] = "ownKind",
        ["evidence"] = "evidence_word",
    };

    private Words Words => site.Words;

    /// <summary>Label: the respect; value: the reason.</summary>
    public IReadOnlyList<Fact> Make(Entry entry) =>
    [
        .. Found(entry)
            .GroupBy(d => d.Demand.Kind)
            .Select(g => new Fact(Words[$"demand.{g.Key}"], string.Join(Words["demand.separator"], g.Select(Say)))),
    ];

    /// <summary>How many reasons there are, in a sentence.</summary>
    public string Count(Entry entry)
    {
        var count = Found(entry).Count;
        return count == 0 ? Words["demand.none"] : Words.Count("demand.count", count);
    }

    /// <summary>Where the limits come from at which something counts as asking; empty when nothing does.</summary>
    public string Limits(Entry entry)
    {
        var sources = Found(entry).Select(d => d.Demand.Evidence).Select(new EvidenceText(site).Of).Distinct().ToList();
        return sources.Count == 0 ? "" : Words.Say(
            "demand.limits", ("source", string.Join(Words["sentence.list_separator"], sources)));
    }

    /// <summary>All of them in one line of few words, for a sheet that has the figures above it.</summary>
    public string Brief(Entry entry) => string.Join(
        Words["sentence.list_separator"],
        Found(entry)
            .Select(found => Blanks.FillPaths(
                found.Demand.Brief, path => Show(path, found.Fields[path], s => s.First))));

    private IReadOnlyList<FoundDemand> Found(Entry entry) =>
        DemandsOf.Entry(entry, site.Collection.Practice.Demands, site.Collection.Store);

    private string Say(FoundDemand found) => Blanks.FillPaths(
        found.Demand.Says, path => Show(path, found.Fields[path], s => s.Both));

    private string Show(string path, FieldValue? value, Func<Shown, string> part) => value switch
    {
        FieldFigure figure => part(site.Quantities.Show(Plain(figure.Stated.Value), RoundingOf(path))),
        FieldCount count => FormattableString.Invariant($"{count.Number.Value}"),
        FieldWords words => string.Join(
            Words["sentence.list_separator"], words.Words.Select(w => Words.Or($"{GroupOf(path)}.{w.Value}", w.Value))),
        _ => Words["sentence.unknown"],
    };

    /// <summary>Customers know a length with the tail as the length; any other basis stays.</summary>
    private static StatedRange Plain(StatedRange stated) =>
        stated.Basis is LengthBasis.Total ? stated.WithoutBasis() : stated;

    /// <summary>Sizes up, ranges to keep inward, so that nothing is promised that was not said.</summary>
    private static Rounding RoundingOf(string path) => path.Split('.')[0] switch
    {
        "adult" when path != "adult.lifeSpan" => Rounding.Upward,
        "tank" => Rounding.Upward,
        "care" => Rounding.Inward,
        _ => Rounding.Nearest,
    };

    private static string GroupOf(string path)
    {
        var name = path[(path.LastIndexOf('.') + 1)..];
        return Groups.GetValueOrDefault(name, name);
    }
}
