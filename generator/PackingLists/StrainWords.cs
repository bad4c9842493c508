using System.Text.RegularExpressions;
using CareSheets.Names;

namespace CareSheets.PackingLists;

/// <summary>
/// Colours and cultivated forms behind a scientific name. Nobody names a species <c>gold</c>, so a genus with
/// nothing but such words behind it is a genus alone; behind an epithet each of them is taken, and words between
/// are left for a person, for they may be the name of a subspecies.
/// </summary>
internal static partial class StrainWords
{
    /// <summary>The words of the strain, in their order, of a name whose genus stands first or behind a code.</summary>
    public static IReadOnlyList<string> In(string name)
    {
        var words = TradeCode.TakeFrom(NameReader.TakeTags(name, []), [])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries).Skip(1).ToList();
        if (words.Count == 0 || IsForm(words[0]))
            return words.TrueForAll(IsForm) ? words : [];
        return [.. words.Skip(1).Where(IsForm)];
    }

    /// <summary>The name without the words of its strain.</summary>
    public static string Without(string name, IReadOnlyList<string> strain)
    {
        var words = name.Split(' ').ToList();
        foreach (var word in strain.Reverse())
        {
            if (words.LastIndexOf(word) is >= 0 and var at)
                words.RemoveAt(at);
        }
        return string.Join(' ', words).TrimEnd(',', ';', '-', ' ');
    }

    /// <summary>
    /// Takes what stands in brackets together: a strain where a colour or a form is in it, else a remark. Names of
    /// authors, places and subgenera begin with a capital and stay where they are, and so does a single mark.
    /// </summary>
    public static string TakeBrackets(string text, LineParts parts) => Bracket().Replace(text, found =>
    {
        var words = found.Groups["inside"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var isStrain = Array.Exists(words, IsForm);
        if (words.Length == 1 && !isStrain || Array.Exists(words, w => char.IsUpper(w[0]) && ListWords.Find(w) is null))
            return found.Value;
        var left = parts.TakeFrom(string.Join(' ', words));
        if (left.Length > 0 && isStrain)
            parts.AddForm(left);
        else if (left.Length > 0)
            parts.Remark = string.Join("; ", new[] { parts.Remark, left }.Where(t => t.Length > 0));
        return " ";
    });

    private static bool IsForm(string word) => ListWords.Find(word)?.Kind == WordKind.Form;

    [GeneratedRegex(@"\((?<inside>[^()]{2,60})\)")]
    private static partial Regex Bracket();
}
