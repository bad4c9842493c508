using CareSheets.Collection;
using CareSheets.Proofing.Advice;
using CareSheets.Proofing.Prose;
using CareSheets.Regulations;

namespace CareSheets.Commands;

/// <summary>The step of a run in which entries are held against the lists of law, and prose against figures.</summary>
internal static class ProofStep
{
    public static void Run(Workbench bench, SpeciesCollection collection)
    {
        var finder = new RegulationFinder(bench.Law.Lists, collection.Store.Jurisdiction);
        var today = DateOnly.FromDateTime(DateTime.Today);
        bench.Bag.Add(RegulationCheck.Check(finder, collection.Entries, today));
        var storeFile = bench.Files.Keys.FirstOrDefault(f => f.EndsWith("/store.yaml", StringComparison.Ordinal));
        bench.Bag.Add(AdviceCheck.Check(collection.Store, collection.Entries, bench.Law.Duties, storeFile ?? ""));
        bench.Bag.Add(ProseCheck.Check(collection));
    }
}
