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

    /// <summary>Fills blanks that are paths of fields, such as <c>{adult.length}</c>.</summary>
    public static string FillPaths(string sentence, Func<string, string> value) =>
        Path().Replace(sentence, m => value(m.Groups[1].Value));

    [GeneratedRegex(@"\{([^{}]*)\}")]
    private static partial Regex Path();

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Blank();
}
