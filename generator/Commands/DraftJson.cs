using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Relatives;

namespace CareSheets.Commands;

/// <summary>A draft as data: each value with who said so, and what is still missing.</summary>
internal static class DraftJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Print(Draft draft, string file)
    {
        var answer = new
        {
            file,
            species = draft.Name.ToString(),
            family = draft.Place.Family,
            order = draft.Place.Order,
            evidence = "from relatives",
            values = draft.Values.Select(v => new { path = v.Path, text = v.Text, comment = v.Comment }),
            missing = draft.Missing,
        };
        return JsonSerializer.Serialize(answer, Options) + "\n";
    }
}
