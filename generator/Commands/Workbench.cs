using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Paper;
using CareSheets.Proofing;
using CareSheets.Quantities;
using CareSheets.Reading;
using CareSheets.Regulations;
using CareSheets.Rendering;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>
/// The steps that commands share, each with what it found in one bag. A step that can't do its
/// work gives nothing, and the bag says why.
/// </summary>
internal sealed class Workbench(ContentSettings settings)
{
    public DiagnosticBag Bag { get; } = new();

    public IReadOnlyDictionary<string, SourceFile> Files { get; private set; } = new Dictionary<string, SourceFile>();

    public LawBook Law { get; private set; } = LawBook.Empty;

    /// <summary>Reads the content, checks it against its schemas and links it.</summary>
    /// <param name="evenWithoutShop">
    /// Whether to go on where store.yaml can't be used, for what else there is to say of the entries. The bag has an
    /// error then.
    /// </param>
    public SpeciesCollection? ReadCollection(bool evenWithoutShop = false)
    {
        if (new ContentReader(settings.Content, settings.Schemas, Bag).Read() is not { } content)
            return null;
        Files = content.Files;
        Law = content.Law;
        if (content.Store is null && !(evenWithoutShop && Bag.HasErrors))
            return null;
        return Linker(content, Bag).Link(
            content.Store ?? NoShop, content.Entries, content.References, content.Glossary, content.Figures,
            content.Store is null ? [] : content.Arrivals);
    }

    private static Store NoShop => new("", "", "", null, null, "en", UnitSystem.Both, "A4", null, null, [])
    {
        Cards = new CardForm(PaperSize.A6, PaperSize.A4),
    };

    public static CollectionLinker Linker(Content content, DiagnosticBag bag) => new(content.Known, bag)
    {
        Practice = content.Practice,
        Families = content.Families,
        Unfinished = content.Unfinished,
    };

    /// <summary>The prose of every entry that can be read, by the entry's name.</summary>
    public IReadOnlyDictionary<string, SpeciesProse> RenderProse(SpeciesCollection collection)
    {
        var renderer = new ProseRenderer(collection);
        var rendered = collection.Entries.AsParallel().AsOrdered().Select(entry =>
        {
            var own = new DiagnosticBag();
            return (entry.Name, Prose: renderer.Render(entry, own), Found: own.Sorted());
        }).ToList();
        foreach (var one in rendered)
            Bag.Add(one.Found);
        return rendered.Where(r => r.Prose is not null).ToDictionary(r => r.Name, r => r.Prose!);
    }

    /// <summary>What the fish room's rules say of every entry; what was waived is given, and not told.</summary>
    /// <param name="collection">All entries.</param>
    /// <param name="today">Nothing where it is not asked how old entries are.</param>
    public IReadOnlyList<AcceptedDiagnostic> ProofByRules(SpeciesCollection collection, DateOnly? today = null)
    {
        var proof = new RuleProof(collection, today);
        Bag.Add(proof.DescribeRules());
        Bag.Add(collection.Entries.SelectMany(proof.Describe));
        Bag.Add(collection.Unfinished.SelectMany(e => UnfinishedProof.Of(e, collection, proof)));
        return [.. collection.Entries.SelectMany(proof.Waived)];
    }

    public Words? ReadWords() => WordsReader.Read(settings.Theme, Bag) is { } words
        ? new Words(words, $"{settings.Theme}/sentences.yaml")
        : null;
}
