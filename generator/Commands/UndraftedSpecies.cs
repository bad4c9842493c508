using CareSheets.Collection;
using CareSheets.Names;
using CareSheets.PackingLists;
using CareSheets.Regulations;
using CareSheets.Rules;

namespace CareSheets.Commands;

/// <summary>
/// What has to be known of a species at once although nobody here can draft it: hazards that are written down of its
/// taxon, and lists of law that name it. Silence means nothing.
/// </summary>
internal static class UndraftedSpecies
{
    /// <summary>Each in a line of its own, beginning with a line end; empty where there is none.</summary>
    public static string Warnings(ScientificName name, string? family, SpeciesCollection collection, LawBook law)
    {
        string?[] taxa = [name.ToString(), name.Genus, family ?? GenusTable.Known.Find(name.Genus)?.Family];
        var hazards = collection.Practice.Hazards
            .Where(h => h.When.Parts.OfType<TaxonIs>().Any(t => t.Names.Intersect(taxa).Any()))
            .Select(h => $"HAZARD: {h.Says}");
        var finder = new RegulationFinder(law.Lists, collection.Store.Jurisdiction);
        var listed = new LineLaw(finder, collection).Of(name, taxa[2]) is { } said ? $"LAW: {said}." : null;
        return string.Concat(hazards.Append(listed).OfType<string>().Select(line => $"\n{line}"));
    }
}
