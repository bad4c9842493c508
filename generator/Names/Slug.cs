using System.Text;

namespace CareSheets.Names;

/// <summary>Addresses made from names: lower-case Latin letters, digits and single hyphens.</summary>
public static class Slug
{
    /// <summary>
    /// Letters with marks lose them, anything else becomes a hyphen. Two names can make the same
    /// address: whoever hands out addresses has to notice.
    /// </summary>
    public static string From(string name)
    {
        var slug = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (!IsMark(c) && slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }
        return slug.ToString().TrimEnd('-');
    }

    private static bool IsMark(char c) =>
        char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.NonSpacingMark;
}
