using System.Text.RegularExpressions;

namespace CareSheets.Renaming;

/// <summary>The text of an entry under its new name. What does not depend on the name stays as it is.</summary>
internal static class EntryEdit
{
    public static string Apply(string text, NameMove move)
    {
        var end = text.IndexOf("\n---", 3, StringComparison.Ordinal);
        var front = end < 0 ? text : text[..end];
        front = Set(front, "scientificName", move.Name.ToString(), "");
        front = Set(front, "scientificNameAuthorship", move.Authorship.Text, "scientificName");
        front = Remove(front, "say");
        front = Set(front, "formerNames", $"[{string.Join(", ", move.FormerNames)}]", "vernacularName");
        return front + (end < 0 ? "" : text[end..]);
    }

    /// <summary>Whether a way of saying the old name is taken out.</summary>
    public static bool DropsSay(NameMove move) => move.Entry.Say is not null;

    /// <summary>The field with its list, in the place where it is, or else behind another.</summary>
    private static string Set(string front, string field, string value, string after)
    {
        var line = $"\n{field}: {value}";
        if (Field(field).Match(front) is { Success: true } found)
            return front[..found.Index] + line + front[(found.Index + found.Length)..];
        var behind = Field(after).Match(front);
        var at = behind.Success ? behind.Index + behind.Length : front.Length;
        return front.Insert(at, line);
    }

    private static string Remove(string front, string field) => Field(field).Replace(front, "", 1);

    /// <summary>A field of the first level with all lines that belong to it.</summary>
    private static Regex Field(string name) =>
        new($@"\n{Regex.Escape(name)}:[^\n]*(?:\n(?:[ -][^\n]*|(?=\n)))*", RegexOptions.CultureInvariant);
}
