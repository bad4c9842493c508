using CareSheets.Diagnostics;
using CareSheets.Names;

namespace CareSheets.Species;

/// <summary>What the collection holds about one species: the record behind its page, sheet and card.</summary>
public sealed record Entry
{
    /// <summary>The file name without its ending, which is the name that links use: <c>danio-rerio</c>.</summary>
    public required string Name { get; init; }

    public required SourceSpan Span { get; init; }

    public required Sourced<ScientificName> ScientificName { get; init; }

    public required Sourced<Authorship> Authorship { get; init; }

    public required Sourced<ScientificName> OriginalName { get; init; }

    /// <summary>Names that customers use, the preferred one first; never empty.</summary>
    public required IReadOnlyList<Sourced<string>> VernacularNames { get; init; }

    /// <summary>How to say the name, where a person has approved a way.</summary>
    public Sourced<string>? Say { get; init; }

    public required IReadOnlyList<Sourced<ScientificName>> FormerNames { get; init; }

    public required IReadOnlyList<Sourced<string>> TradeCodes { get; init; }

    public required Sourced<string> Order { get; init; }

    public required Sourced<string> Family { get; init; }

    public required Origin Origin { get; init; }

    public required Adult Adult { get; init; }

    public required IReadOnlyList<CareRange> Ranges { get; init; }

    public required IReadOnlyList<CareWord> CareWords { get; init; }

    public required Tank Tank { get; init; }

    public required Company Company { get; init; }

    public required IReadOnlyList<Sourced<string>> Diet { get; init; }

    public required IReadOnlyList<Sourced<string>> Foods { get; init; }

    public required IReadOnlyList<Sourced<string>> Cautions { get; init; }

    /// <summary>Evidence of every figure that names none of its own.</summary>
    public required Evidence Evidence { get; init; }

    public required IReadOnlyList<Sourced<string>> References { get; init; }

    /// <summary>Day on which a person last read the whole entry.</summary>
    public required DateOnly Reviewed { get; init; }

    public required Prose Prose { get; init; }

    /// <summary>Values that do not fit the relatives and are right all the same.</summary>
    public required IReadOnlyList<Acceptance> Accepted { get; init; }

    /// <summary>Rules that do not hold for this species, by the writer's word.</summary>
    public IReadOnlyList<Waiver> Waived { get; init; } = [];

    /// <summary>All that the writer stated, field by field, for rules to look at.</summary>
    public EntryFields Fields { get; init; } = EntryFields.None;

    /// <summary>When it is about; nothing where nobody has said.</summary>
    public Activity? Activity { get; init; }

    /// <summary>What its buyers are told otherwise than those of other fishes.</summary>
    public Advice Advice { get; init; } = Advice.None;

    /// <summary>
    /// False where the file lacks something that every entry has, or says it in a form that can't be read. What
    /// stands in for it has no place; all else in the entry is checked, and none of it published.
    /// </summary>
    public bool IsWhole { get; init; } = true;

    public string Genus => ScientificName.Value.Genus;

    /// <summary>Its own name and those of its genus, family and order.</summary>
    public IEnumerable<string> Taxa => [ScientificName.Value.ToString(), Genus, Family.Value, Order.Value];

    public string VernacularName => VernacularNames[0].Value;

    public Respelling Respelling =>
        Say is { } say ? Respelling.Approved(say.Value) : Respelling.Of(ScientificName.Value);

    public CareRange? Range(string field) => Ranges.FirstOrDefault(r => r.Declaration.Field == field);
}

/// <summary>The Markdown under the front matter, and where in the file it begins.</summary>
public sealed record Prose(string Markdown, SourceSpan Start)
{
    /// <summary>What stands in a draft where a person has written nothing yet, sentence by sentence.</summary>
    public static readonly IReadOnlyList<string> OfDraft =
    [
        "Nothing is written here yet.",
        "A customer at the tank would like to know what is special about this fish.",
    ];
}
