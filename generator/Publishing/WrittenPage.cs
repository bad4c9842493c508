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
        var ids = new HashSet<string>();
        var (twice, links, loaded, scripts) =
            (new List<string>(), new List<string>(), new List<string>(), new List<string>());
        var headings = 0;
        foreach (var element in document.All)
        {
            headings += element.LocalName == "h1" ? 1 : 0;
            if (element.LocalName == "style")
                loaded.AddRange(StyleSheet.Loads(element.TextContent));
            foreach (var attribute in element.Attributes)
            {
                if (attribute.Name == "id" && attribute.Value.Length > 0 && !ids.Add(attribute.Value))
                    twice.Add(attribute.Value);
                if (IsLink(element, attribute))
                    links.Add(attribute.Value);
                loaded.AddRange(LoadedBy(element, attribute));
                scripts.AddRange(ScriptIn(attribute));
            }
        }
        links.AddRange(loaded.Where(SiteLink.IsRelative));
        return new WrittenPage(address, ids, [.. twice.Distinct()], headings, links, loaded, scripts);
    }

    private static bool IsLink(IElement element, IAttr attribute) => attribute.Name switch
    {
        "href" => element.LocalName is "a" or "area",
        "action" => element.LocalName == "form",
        _ => false,
    };

    private static IEnumerable<string> LoadedBy(IElement element, IAttr attribute) => attribute.Name switch
    {
        "src" or "poster" or "background" => [attribute.Value],
        "data" when element.LocalName == "object" => [attribute.Value],
        "href" when element.LocalName is "link" or "use" or "image" => [attribute.Value],
        "srcset" => attribute.Value.Split(',').Select(one => one.Trim().Split(' ')[0]),
        "style" => StyleSheet.Loads(attribute.Value),
        _ => [],
    };

    /// <summary>An attribute that is a script, or an address that would run one when followed.</summary>
    private static IEnumerable<string> ScriptIn(IAttr attribute)
    {
        if (attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            return [$"{attribute.Name}={attribute.Value}"];
        return Addresses.Contains(attribute.Name) && SiteLink.CouldRunScript(attribute.Value) ? [attribute.Value] : [];
    }
}
