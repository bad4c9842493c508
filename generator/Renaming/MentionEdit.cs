using System.Text.RegularExpressions;

namespace CareSheets.Renaming;

/// <summary>
/// Mentions of an entry in other files of the content: links of the prose, figures borrowed from it, batches
/// and answers. Elsewhere a name is left alone, since the former name leads on.
/// </summary>
internal static class MentionEdit
{
    public static string Apply(string text, string oldSlug, string newSlug)
    {
        var name = $@"(?<![\w-]){Regex.Escape(oldSlug)}(?![\w-])";
        text = Regex.Replace(text, $@"(?<=\]\((?:\./)?){name}(?=\.md[)#])", newSlug);
        text = Regex.Replace(text, $@"(?<=\blike:\s*){name}", newSlug);
        text = Regex.Replace(text, $@"(?<=^\s*(?:- )?entry:\s*){name}", newSlug, RegexOptions.Multiline);
        return Regex.Replace(
            text, @"^\s*perhaps:.*$", line => Regex.Replace(line.Value, name, newSlug), RegexOptions.Multiline);
    }
}
