using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Proofing;
using CareSheets.Proofing.Prose;
using CareSheets.Reading;
using CareSheets.Relatives;
using CareSheets.Rendering;

namespace CareSheets.Commands;

/// <summary>
/// The content as a running program keeps it: after an entry is saved, that file alone is read again, linked
/// with all others, and proofed, in an instant. What the entry's values teach its relatives waits for
/// <see cref="Open"/>.
/// </summary>
internal sealed class ProofDesk
{
    private readonly ContentReader _reader;
    private Content _content;
    private RelativesEngine _relatives;
    private RuleProof _rules;

    private ProofDesk(ContentReader reader, Content content, RelativesEngine relatives)
    {
        (_reader, _content, _relatives) = (reader, content, relatives);
        _rules = new RuleProof(relatives.Collection);
    }

    public SpeciesCollection Collection => _relatives.Collection;

    /// <summary>Reads everything. Nothing when the content can't be used at all; then the bag says why.</summary>
    public static ProofDesk? Open(ContentSettings settings, DiagnosticBag bag)
    {
        var reader = new ContentReader(settings.Content, settings.Schemas, bag);
        if (reader.Read() is not { Store: not null } content)
            return null;
        return new ProofDesk(reader, content, RelativesEngine.Ask(Link(content, bag)));
    }

    /// <summary>All that there is to say of an entry as its file is now, in the order of printing.</summary>
    /// <param name="name">The entry's name, which is its file's.</param>
    public IReadOnlyList<Diagnostic> Proof(string name)
    {
        var bag = new DiagnosticBag();
        _content = _reader.ReadAgain(_content, name, bag);
        var collection = Link(_content, bag);
        _rules = _rules.Again(collection, name);
        if (collection.Entries.FirstOrDefault(e => e.Name == name) is { } entry)
        {
            _relatives = _relatives.Again(collection, entry) ?? RelativesEngine.Ask(collection);
            bag.Add(OutlierText.Describe(_relatives));
            bag.Add(_rules.Describe(entry));
            bag.Add(ProseCheck.Check(entry, new SpeciesNames(collection)));
            bag.Add(ProofStep.Law(_content.Law, collection.Store, [entry], ""));
            new ProseRenderer(collection).Render(entry, bag);
        }
        else if (collection.Unfinished.FirstOrDefault(e => e.Name == name) is { } unfinished)
            bag.Add(UnfinishedProof.Of(unfinished, collection, _rules));
        return [.. bag.Sorted().Where(d => EntryNames.Concerns(d, [name]))];
    }

    private static SpeciesCollection Link(Content content, DiagnosticBag bag) =>
        Workbench.Linker(content, bag)
            .Link(content.Store!, content.Entries, content.References, content.Glossary, content.Figures);
}
