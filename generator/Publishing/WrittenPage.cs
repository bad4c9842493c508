using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace CareSheets.Publishing;

/// <summary>What a browser would find in a written page.</summary>
/// <param name="Links">Where the page leads, within the site and beyond.</param>
/// <param name="Loaded">What a browser fetches to show it.</param>
/// <param name="Scripts">Attributes and addresses that could run a script.</param>
internal sealed record WrittenPage(
    string Address,
    IReadOnlySet<string> Ids,
    IReadOnlyList<string> IdsTwice,
    int MainHeadings,
    IReadOnlyList<string> Links,
    IReadOnlyList<string> Loaded,
    IReadOnlyList<string> Scripts)
{
    private static readonly string[] Addresses = ["href", "src", "action", "formaction", "xlink:href", "content"];

    public static WrittenPage Read(string address, string text)
    {
        using var document = new HtmlParser().ParseDocument(text);
        var ids = document.All.Select(e => e.Id ?? "").Where(id => id.Length > 0).ToList();
        var loaded = LoadedBy(document).ToList();
        return new WrittenPage(
            address,
            ids.ToHashSet(),
            [.. ids.GroupBy(id => id).Where(g => g.Count() > 1).Select(g => g.Key)],
            document.QuerySelectorAll("h1").Length,
            [.. Values(document, "a[href], area[href]", "href"), .. loaded.Where(SiteLink.IsRelative)],
            loaded,
            [.. document.All.SelectMany(e => e.Attributes).SelectMany(ScriptIn)]);
    }

    private static IEnumerable<string> LoadedBy(IParentNode document) =>
    [
        .. Values(document, "[src]", "src"),
        .. Values(document, "[poster]", "poster"),
        .. Values(document, "object[data]", "data"),
        .. Values(document, "[background]", "background"),
        .. Values(document, "link[href]", "href"),
        .. Values(document, "use[href], image[href]", "href"),
        .. Values(document, "[srcset]", "srcset")
            .SelectMany(set => set.Split(',').Select(one => one.Trim().Split(' ')[0])),
        .. Values(document, "[style]", "style").SelectMany(StyleSheet.Loads),
        .. document.QuerySelectorAll("style").SelectMany(e => StyleSheet.Loads(e.TextContent)),
    ];

    /// <summary>An attribute that is a script, or an address that would run one when followed.</summary>
    private static IEnumerable<string> ScriptIn(IAttr attribute)
    {
        if (attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            yield return $"{attribute.Name}={attribute.Value}";
        if (Addresses.Contains(attribute.Name) && SiteLink.CouldRunScript(attribute.Value))
            yield return attribute.Value;
    }

    private static IEnumerable<string> Values(IParentNode document, string selector, string attribute) =>
        document.QuerySelectorAll(selector).Select(e => e.GetAttribute(attribute)).OfType<string>();
}
