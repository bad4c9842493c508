using System.Text.Encodings.Web;
using System.Text.Json;

namespace CareSheets.Pages;

/// <summary>
/// Data for the scripts of a page, as a classic script that sets one variable: pages opened from a
/// disk may load scripts but neither fetch files nor import modules.
/// </summary>
public sealed record DataFile(string Address, string Variable, object Content)
{
    private static readonly JsonSerializerOptions Options =
        new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public string Text => $"var {Variable} = {JsonSerializer.Serialize(Content, Options)};\n";
}
