using CareSheets.Arrivals;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Rules;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>
/// Makes the collection out of what was read, and tells of every name that leads nowhere or to two
/// places.
/// </summary>
public sealed class CollectionLinker(KnownNames known, DiagnosticBag bag)
{
    /// <summary>The fish room's rules, hazards and demands, whose works are linked too.</summary>
    public Practice Practice { get; init; } = Practice.None;

    /// <summary>What is told of families; nothing where nobody means to tell it.</summary>
    public FamilyNotes? Families { get; init; }

    /// <summary>Entries that lack something: checked like the others, and not in the collection.</summary>
    public IReadOnlyList<Entry> Unfinished { get; init; } = [];

    public SpeciesCollection Link(
        Store store, IReadOnlyList<Entry> entries, IReadOnlyList<Reference> references,
        IReadOnlyList<GlossaryTerm> glossary, FigureDeclarations figures, IReadOnlyList<Arrival>? arrivals = null)
    {
        IReadOnlyList<Entry> all = [.. entries, .. Unfinished];
        var links = new EntryLinks(known, all);
        foreach (var found in all.SelectMany(links.Check))
            Add(found);
        CheckCompany(all);
        CheckNamesOnce(all);
        ParentCheck.Check(entries, bag);
        CheckAddresses(entries.SelectMany(e => e.Origin.WaterBodies));
        CheckGlossary(glossary);
        CheckFamilies(entries);
        bag.Add(EntryLinks.Works(known, Practice.Rules.Select(r => r.Evidence)
            .Concat(Practice.Hazards.Select(h => h.Evidence)).Concat(Practice.Demands.Select(d => d.Evidence))));
        var linked = new ArrivalLinker(known, entries, store, bag).Link(arrivals ?? []);
        return new SpeciesCollection(store, entries.DistinctBy(e => e.Name), references, glossary, figures, known)
        {
            Practice = Practice,
            Unfinished = Unfinished,
            FamilyNotes = (Families?.Notes ?? []).ToDictionary(n => n.Name.Value),
            Arrivals = new ArrivalBook(linked, store.Observation),
        };
    }

    public static string Suggest(string name, IEnumerable<string> candidates) =>
        EditDistance.Nearest(name, candidates) is { } nearest ? $"Did you mean {nearest}?" : "Check how it is spelt.";

    /// <summary>Names of any rank have to be those of some entry; where one is unread it may be that one's.</summary>
    private void CheckCompany(IReadOnlyList<Entry> entries)
    {
        if (!known.Unread.Except(entries.Select(e => e.Name)).All(known.Drafts.Contains))
            return;
        var taxa = entries.SelectMany(e => e.Taxa).ToHashSet();
        foreach (var name in entries.SelectMany(e => e.Company.NotWith).Where(n => !taxa.Contains(n.Value)))
            bag.Add(LinkCodes.NoSuchCompany, name.Span,
                ("name", name.Value), ("suggestion", Suggest(name.Value, taxa)));
    }

    private void CheckNamesOnce(IReadOnlyList<Entry> entries)
    {
        var all = entries.SelectMany(e => e.FormerNames.Prepend(e.ScientificName).Select(n => (Entry: e, Name: n)));
        foreach (var same in all.GroupBy(n => n.Name.Value.Slug).Where(g => g.Count() > 1))
        {
            var first = same.First();
            foreach (var other in same.Skip(1))
                Add(Diagnostic.Of(LinkCodes.NameTwice, other.Name.Span, ("name", other.Name.Value.ToString()))
                    .With([new RelatedSpan(first.Name.Span, "also here")]));
        }
    }

    private void CheckAddresses(IEnumerable<Sourced<string>> waters)
    {
        foreach (var same in waters.GroupBy(w => Slug.From(w.Value)))
        {
            var first = same.First();
            if (same.FirstOrDefault(w => w.Value != first.Value) is { } other)
                bag.Add(Diagnostic.Of(LinkCodes.SameAddress, other.Span, ("name", other.Value), ("other", first.Value))
                    .With([new RelatedSpan(first.Span, "the other is here")]));
        }
    }

    private void CheckFamilies(IReadOnlyList<Entry> entries)
    {
        if (Families is not { } families)
            return;
        FamilyCheck.Check(families, entries, known.Unread.IsSubsetOf(known.Drafts), bag);
        bag.Add(EntryLinks.Works(known, families.Notes.Select(f => f.Evidence)));
    }

    private void CheckGlossary(IReadOnlyList<GlossaryTerm> glossary)
    {
        var keys = known.Terms ?? new HashSet<string>();
        foreach (var key in glossary.SelectMany(t => t.See).Where(k => !keys.Contains(k.Value)))
            bag.Add(LinkCodes.NoSuchTerm, key.Span, ("name", key.Value), ("suggestion", Suggest(key.Value, keys)));
    }

    /// <summary>What is found of a stand-in is nobody's mistake.</summary>
    private void Add(Diagnostic found)
    {
        if (found.HasPlaces)
            bag.Add(found);
    }
}
