using System.Text;
using CareSheets.Diagnostics;

namespace CareSheets.Publishing;

/// <summary>
/// The theme's files that go into the site as they are: style sheets joined in the order that
/// css/order.txt gives, scripts, pictures.
/// </summary>
public static class ThemeAssets
{
    public static IReadOnlyList<SiteFile> Read(string folder, DiagnosticBag bag)
    {
        try
        {
            return [Styles(Path.Combine(folder, "css")), .. Copies(folder, "js"), .. Copies(folder, "images")];
        }
        catch (IOException failure)
        {
            var whole = SourceSpan.WholeFile(folder.Replace('\\', '/'));
            bag.Add(ReadingCodes.Unreadable, whole, ("reason", failure.Message));
            return [];
        }
    }

    private static SiteFile Styles(string folder)
    {
        var text = new StringBuilder();
        foreach (var name in File.ReadLines(Path.Combine(folder, "order.txt")).Where(l => l.Length > 0))
            text.Append(File.ReadAllText(Path.Combine(folder, name)).ReplaceLineEndings("\n")).Append('\n');
        return new SiteFile("site.css", Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static IEnumerable<SiteFile> Copies(string folder, string part)
    {
        var inside = Path.Combine(folder, part);
        return !Directory.Exists(inside)
            ? []
            : Directory.GetFiles(inside).Order(StringComparer.Ordinal)
                .Select(path => new SiteFile(Path.GetFileName(path), File.ReadAllBytes(path)));
    }
}
