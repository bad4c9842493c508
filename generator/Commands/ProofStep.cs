using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Proofing.Advice;
using CareSheets.Proofing.Prose;
using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>The step of a run in which entries are held against the lists of law, and prose against figures.</summary>
internal static class ProofStep
{
    public static void Run(Workbench bench, SpeciesCollection collection)
    {
        var storeFile = bench.Files.Keys.FirstOrDefault(f => f.EndsWith("/store.yaml", StringComparison.Ordinal));
        bench.Bag.Add(Law(bench.Law, collection.Store, collection.Entries, storeFile ?? ""));
        var finder = new RegulationFinder(bench.Law.Lists, collection.Store.Jurisdiction);
        bench.Bag.Add(RegulationCheck.Of(finder, collection.Unfinished).Where(found => found.HasPlaces));
        bench.Bag.Add(ProseCheck.Check(collection));
    }

    /// <summary>What the lists of law and the duties of advice have to say of these entries.</summary>
    /// <param name="storeFile">Where what the shop itself lacks is told.</param>
    public static IEnumerable<Diagnostic> Law(
        LawBook law, Store store, IReadOnlyList<Entry> entries, string storeFile)
    {
        var finder = new RegulationFinder(law.Lists, store.Jurisdiction);
        return RegulationCheck.Check(finder, entries, DateOnly.FromDateTime(DateTime.Today))
            .Concat(AdviceCheck.Check(store, entries, law.Duties, storeFile));
    }
}
