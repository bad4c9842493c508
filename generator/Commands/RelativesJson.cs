using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>A species and its congeners, range by range, as data.</summary>
internal static class RelativesJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Print(SpeciesCollection collection, Entry entry)
    {
        var ranges = collection.Ranges.Where(r => r.ComparedAmongRelatives).ToDictionary(
            r => r.Field,
            r => collection.Congeners(entry).Prepend(entry).ToDictionary(
                e => e.ScientificName.Value.ToString(),
                e => e.Range(r.Field)?.Of(RangeKind.Keep)?.Range.Value.Text));
        var answer = new { species = entry.ScientificName.Value.ToString(), genus = entry.Genus, keep = ranges };
        return JsonSerializer.Serialize(answer, Options) + "\n";
    }
}
