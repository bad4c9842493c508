using System.Text;

namespace CareSheets.Names;

/// <summary>Addresses made from names: lower-case Latin letters, digits and single hyphens.</summary>
public static class Slug
{
    // The program runs without the culture data that would take marks off letters by itself.
    private const string Marked = "àáâãäåāăąçćĉċčďèéêëēĕėęěĝğġģĥìíîïĩīĭįĵķĺļľñńņňòóôõöōŏőŕŗřśŝşšţťùúûüũūŭůűųŵýÿŷźżž";
    private const string Plain = "aaaaaaaaacccccdeeeeeeeeegggghiiiiiiiijklllnnnnoooooooorrrssssttuuuuuuuuuuwyyyzzz";

    /// <summary>
    /// Letters with marks lose them, anything else becomes a hyphen. Two names can make the same
    /// address: whoever hands out addresses has to notice.
    /// </summary>
    public static string From(string name)
    {
        var slug = new StringBuilder();
        foreach (var c in name.ToLowerInvariant().Select(WithoutMark))
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(c);
            else if (!IsMark(c) && slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }
        return slug.ToString().TrimEnd('-');
    }

    private static char WithoutMark(char c) => Marked.IndexOf(c) is var at and >= 0 ? Plain[at] : c;

    private static bool IsMark(char c) =>
        char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.NonSpacingMark;
}
