using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>Whether families.yaml and the entries speak of the same families, each by a name of its own.</summary>
internal static class FamilyCheck
{
    /// <param name="told">What families.yaml holds.</param>
    /// <param name="entries">All that could be read.</param>
    /// <param name="isComplete">No entry was left unread, so a family that none is in has none.</param>
    /// <param name="bag">Takes what there is to say.</param>
    public static void Check(
        FamilyNotes told, IReadOnlyList<Entry> entries, bool isComplete, DiagnosticBag bag)
    {
        var families = entries.GroupBy(e => e.Family.Value).OrderBy(g => g.Key, StringComparer.Ordinal).ToList();
        foreach (var family in families.Where(f => !told.Named.Contains(f.Key)))
            bag.Add(LinkCodes.FamilyUntold, family.First().Family.Span, ("family", family.Key));
        var known = families.Select(f => f.Key).ToHashSet();
        foreach (var note in told.Notes.Where(n => isComplete && !known.Contains(n.Name.Value)))
            bag.Add(LinkCodes.NoSuchFamily, note.Name.Span, ("family", note.Name.Value),
                ("suggestion", CollectionLinker.Suggest(note.Name.Value, known)));
        CheckNames(told.Notes, bag);
    }

    /// <summary>Two families with one name can't be told apart in a list.</summary>
    private static void CheckNames(IReadOnlyList<FamilyNote> notes, DiagnosticBag bag)
    {
        foreach (var same in notes.GroupBy(n => n.VernacularName, StringComparer.OrdinalIgnoreCase))
        {
            var first = same.First();
            foreach (var other in same.Skip(1))
                bag.Add(Diagnostic.Of(LinkCodes.FamilyNameTwice, other.VernacularNames[0].Span,
                    ("name", other.VernacularName), ("family", first.Name.Value))
                    .With([new RelatedSpan(first.VernacularNames[0].Span, "also here")]));
        }
    }
}
