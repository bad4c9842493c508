using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>Whatever one entry names: its file, its countries, works and lenders.</summary>
/// <param name="known">Names that the content's files give.</param>
/// <param name="entries">All entries, those too that lack something.</param>
internal sealed class EntryLinks(KnownNames known, IReadOnlyList<Entry> entries)
{
    private readonly WrittenGenera _genera = new(entries);

    public IEnumerable<Diagnostic> Check(Entry entry) =>
    [
        .. FileName(entry), .. Parentheses(entry), .. NomenclatureCheck.Check(entry), .. Countries(entry),
        .. References(entry), .. Borrowed(entry),
    ];

    /// <summary>Works that are cited and not in references.yaml.</summary>
    public static IEnumerable<Diagnostic> Works(KnownNames known, IEnumerable<Evidence> evidence)
    {
        var cited = evidence.Where(e => e.Kind == EvidenceKind.Published);
        return from work in cited.Select(e => new Sourced<string>(e.Key, e.Span)).Distinct()
               where known.References is { } keys && !keys.Contains(work.Value)
               select Diagnostic.Of(LinkCodes.NoSuchReference, work.Span,
                   ("name", work.Value), ("suggestion", EvidenceGuess.Hint(work.Value, known.References!)));
    }

    private IEnumerable<Diagnostic> FileName(Entry entry)
    {
        var name = entry.ScientificName.Value;
        if (entry.Name != name.Slug)
            yield return Diagnostic.Of(LinkCodes.FileName, entry.ScientificName.Span,
                ("name", name.ToString()), ("suggestion", _genera.Hint(entry)));
    }

    private static IEnumerable<Diagnostic> Parentheses(Entry entry)
    {
        var name = entry.ScientificName.Value;
        var expected = entry.Authorship.Value.For(name, entry.OriginalName.Value);
        if (expected != entry.Authorship.Value && !entry.OriginalName.Span.IsNone && !entry.ScientificName.Span.IsNone)
            yield return Diagnostic.Of(LinkCodes.Parentheses, entry.Authorship.Span,
                ("name", name.ToString()), ("actual", entry.Authorship.Value.Text), ("expected", expected.Text));
    }

    private static IEnumerable<Diagnostic> Countries(Entry entry) =>
        from code in entry.Origin.CountryCodes
        where CountryCatalogue.Find(code.Value) is null
        select Diagnostic.Of(LinkCodes.NoSuchCountry, code.Span,
            ("code", code.Value), ("suggestion", CountryGuess.Hint(code.Value)));

    private IEnumerable<Diagnostic> References(Entry entry)
    {
        var listed = from key in entry.References.Distinct()
                     where known.References is { } keys && !keys.Contains(key.Value)
                     select Diagnostic.Of(LinkCodes.NoSuchReference, key.Span, ("name", key.Value),
                         ("suggestion", EvidenceGuess.OfAWork(key.Value, known.References!)));
        var cited = Works(known, entry.Ranges.SelectMany(r => r.Kinds).Select(k => k.Evidence).Append(entry.Evidence)
            .Concat(new[] { entry.Adult.Evidence, entry.Tank.Evidence, entry.Company.Evidence }.OfType<Evidence>()));
        return listed.Concat(cited);
    }

    private IEnumerable<Diagnostic> Borrowed(Entry entry) =>
        from range in entry.Ranges
        from evidence in range.Kinds.Select(k => k.Evidence).Where(e => e.Kind == EvidenceKind.Like).Distinct()
        let wrong = Lender(entry, range.Declaration.Field, evidence)
        where wrong is not null
        select wrong;

    private Diagnostic? Lender(Entry entry, string field, Evidence evidence)
    {
        if (!known.Entries.Contains(evidence.Key))
            return Diagnostic.Of(LinkCodes.NoSuchEntry, evidence.Span,
                ("name", evidence.Key), ("suggestion", CollectionLinker.Suggest(evidence.Key, known.Entries)));
        var lender = entries.FirstOrDefault(e => e.Name == evidence.Key);
        var lends = lender is not null && lender != entry &&
            lender.Range(field)?.Kinds.Any(k => k.Evidence.IsOwn) == true;
        return lender is not null && !lends
            ? Diagnostic.Of(LinkCodes.LikeHasNone, evidence.Span, ("name", evidence.Key), ("field", field)) : null;
    }
}
