using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Collection;

/// <summary>A genus is in one family, a family in one order: the same in every entry.</summary>
internal static class ParentCheck
{
    public static void Check(IReadOnlyList<Entry> entries, DiagnosticBag bag)
    {
        Check(entries, bag, e => e.Genus, e => e.Family);
        Check(entries, bag, e => e.Family.Value, e => e.Order);
    }

    private static void Check(
        IReadOnlyList<Entry> entries, DiagnosticBag bag, Func<Entry, string> child, Func<Entry, Sourced<string>> parent)
    {
        foreach (var taxon in entries.GroupBy(child))
        {
            var usual = taxon.Select(parent).GroupBy(p => p.Value).OrderByDescending(g => g.Count()).First().First();
            foreach (var odd in taxon.Select(parent).Where(p => p.Value != usual.Value))
                bag.Add(Diagnostic.Of(LinkCodes.TwoParents, odd.Span,
                    ("taxon", taxon.Key), ("here", odd.Value), ("there", usual.Value))
                    .With([new RelatedSpan(usual.Span, $"{usual.Value} here")]));
        }
    }
}
