using System.Text;

namespace CareSheets.PackingLists;

/// <summary>A text as a YAML value of one line, whatever it holds (YAML 1.2.2, section 7.3.1).</summary>
internal static class YamlText
{
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            if (c is '"' or '\\')
                quoted.Append('\\').Append(c);
            else if (c == '\t')
                quoted.Append("\\t");
            else
                quoted.Append(char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' ? ' ' : c);
        }
        return quoted.Append('"').ToString();
    }

    /// <summary>Without quotes where nothing in it means anything to YAML.</summary>
    public static string Plain(string text) =>
        text.Length > 0 && char.IsLetter(text[0]) && text.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '.') &&
        text.Trim() == text && text is not ("yes" or "no" or "true" or "false" or "null" or "on" or "off")
            ? text
            : Quoted(text);

    public static string List(IEnumerable<string> texts) => $"[{string.Join(", ", texts)}]";
}
