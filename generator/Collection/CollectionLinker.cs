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

    public SpeciesCollection Link(
        Store store, IReadOnlyList<Entry> entries, IReadOnlyList<Reference> references,
        IReadOnlyList<GlossaryTerm> glossary, FigureDeclarations figures, IReadOnlyList<Arrival>? arrivals = null)
    {
        foreach (var entry in entries)
        {
            CheckName(entry);
            NomenclatureCheck.Check(entry, bag);
            CheckCountries(entry);
            CheckReferences(entry);
            CheckBorrowed(entry, entries);
        }
        CheckCompany(entries);
        CheckNamesOnce(entries);
        ParentCheck.Check(entries, bag);
        CheckAddresses(entries.SelectMany(e => e.Origin.WaterBodies));
        CheckGlossary(glossary);
        CheckFamilies(entries);
        CheckWorks(Practice.Rules.Select(r => r.Evidence).Concat(Practice.Hazards.Select(h => h.Evidence))
            .Concat(Practice.Demands.Select(d => d.Evidence)), []);
        var linked = new ArrivalLinker(known, entries, store, bag).Link(arrivals ?? []);
        return new SpeciesCollection(store, entries.DistinctBy(e => e.Name), references, glossary, figures, known)
        {
            Practice = Practice,
            FamilyNotes = (Families?.Notes ?? []).ToDictionary(n => n.Name.Value),
            Arrivals = new ArrivalBook(linked, store.Observation),
        };
    }

    public static string Suggest(string name, IEnumerable<string> candidates) =>
        EditDistance.Nearest(name, candidates) is { } nearest ? $"Did you mean {nearest}?" : "Check how it is spelt.";

    private void CheckName(Entry entry)
    {
        var name = entry.ScientificName.Value;
        if (entry.Name != name.Slug)
            bag.Add(LinkCodes.FileName, entry.ScientificName.Span,
                ("name", name.ToString()), ("file", name.Slug + ".md"));
        var expected = entry.Authorship.Value.For(name, entry.OriginalName.Value);
        if (expected != entry.Authorship.Value)
            bag.Add(LinkCodes.Parentheses, entry.Authorship.Span,
                ("name", name.ToString()), ("actual", entry.Authorship.Value.Text), ("expected", expected.Text));
    }

    private void CheckCountries(Entry entry)
    {
        foreach (var code in entry.Origin.CountryCodes.Where(c => CountryCatalogue.Find(c.Value) is null))
            bag.Add(LinkCodes.NoSuchCountry, code.Span, ("code", code.Value),
                ("suggestion", code.Value == "UK" ? "The United Kingdom is GB." : "Look it up by the country's name."));
    }

    private void CheckReferences(Entry entry) => CheckWorks(
        entry.Ranges.SelectMany(r => r.Kinds).Select(k => k.Evidence).Append(entry.Evidence)
            .Concat(new[] { entry.Adult.Evidence, entry.Tank.Evidence, entry.Company.Evidence }.OfType<Evidence>()),
        entry.References);

    private void CheckWorks(IEnumerable<Evidence> evidence, IReadOnlyList<Sourced<string>> listed)
    {
        if (known.References is not { } keys)
            return;
        var cited = evidence.Where(e => e.Kind == EvidenceKind.Published)
            .Select(e => new Sourced<string>(e.Key, e.Span));
        foreach (var key in listed.Concat(cited).Distinct().Where(k => !keys.Contains(k.Value)))
            bag.Add(LinkCodes.NoSuchReference, key.Span, ("name", key.Value), ("suggestion", Suggest(key.Value, keys)));
    }

    private void CheckBorrowed(Entry entry, IReadOnlyList<Entry> entries)
    {
        foreach (var range in entry.Ranges)
        {
            foreach (var evidence in range.Kinds.Select(k => k.Evidence).Where(e => e.Kind == EvidenceKind.Like)
                .Distinct())
                CheckLender(entry, range.Declaration.Field, evidence, entries);
        }
    }

    private void CheckLender(Entry entry, string field, Evidence evidence, IReadOnlyList<Entry> entries)
    {
        if (!known.Entries.Contains(evidence.Key))
        {
            bag.Add(LinkCodes.NoSuchEntry, evidence.Span,
                ("name", evidence.Key), ("suggestion", Suggest(evidence.Key, known.Entries)));
            return;
        }
        var lender = entries.FirstOrDefault(e => e.Name == evidence.Key);
        var lends = lender is not null && lender != entry &&
            lender.Range(field)?.Kinds.Any(k => k.Evidence.IsOwn) == true;
        if (lender is not null && !lends)
            bag.Add(LinkCodes.LikeHasNone, evidence.Span, ("name", evidence.Key), ("field", field));
    }

    /// <summary>Names of any rank have to be those of some entry; where one is unread it may be that one's.</summary>
    private void CheckCompany(IReadOnlyList<Entry> entries)
    {
        if (!known.Unread.IsSubsetOf(known.Drafts))
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
                bag.Add(Diagnostic.Of(LinkCodes.NameTwice, other.Name.Span, ("name", other.Name.Value.ToString()))
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
        CheckWorks(families.Notes.Select(f => f.Evidence), []);
    }

    private void CheckGlossary(IReadOnlyList<GlossaryTerm> glossary)
    {
        var keys = known.Terms ?? new HashSet<string>();
        foreach (var key in glossary.SelectMany(t => t.See).Where(k => !keys.Contains(k.Value)))
            bag.Add(LinkCodes.NoSuchTerm, key.Span, ("name", key.Value), ("suggestion", Suggest(key.Value, keys)));
    }
}
