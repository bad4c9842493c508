using System.Text.RegularExpressions;

namespace CareSheets.Pages;

/// <summary>Fills the blanks of a sentence in one pass: a value that looks like a blank stays as it is.</summary>
internal static partial class Blanks
{
    public static string Fill(string sentence, IEnumerable<(string Blank, string Value)> values)
    {
        var byBlank = values.ToDictionary(v => v.Blank, v => v.Value);
        return Blank().Replace(sentence, m => byBlank.GetValueOrDefault(m.Groups[1].Value, m.Value));
    }

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Blank();
}
