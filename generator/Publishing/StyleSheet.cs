using System.Text.RegularExpressions;

namespace CareSheets.Publishing;

/// <summary>What a style sheet, or a style written into a page, makes a browser fetch.</summary>
internal static partial class StyleSheet
{
    public static IEnumerable<string> Loads(string css) =>
        Address().Matches(css).Select(m => m.Groups.Values.Skip(1).First(g => g.Success).Value.Trim());

    [GeneratedRegex("""url\(\s*["']?([^"')]*)["']?\s*\)|@import\s+["']([^"']*)["']""", RegexOptions.IgnoreCase)]
    private static partial Regex Address();
}
