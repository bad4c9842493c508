using CareSheets.Collection;
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
        bench.Bag.Add(ProseCheck.Check(collection));
    }
}
