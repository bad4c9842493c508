using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using CareSheets.Diagnostics;

namespace CareSheets.Publishing;

/// <summary>
/// Reads a written site as a browser would and tells what is wrong with it: links that lead
/// nowhere, ids given twice, more or less than one main heading, anything loaded from elsewhere,
/// addresses that could run a script.
/// </summary>
public static class SiteCheck
{
    private static readonly string[] Loading = ["src", "srcset", "poster", "data", "background"];
    private static readonly string[] Addresses = ["href", "src", "action", "formaction", "xlink:href"];

    public static IEnumerable<Diagnostic> Check(string folder)
    {
        var files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal).ToList();
        var pages = files.Where(f => f.EndsWith(".html", StringComparison.Ordinal))
            .AsParallel().AsOrdered()
            .Select(address => Read(folder, address)).ToList();
        var ids = pages.ToDictionary(p => p.Address, p => p.Ids);
        var known = files.ToHashSet();
        return pages.SelectMany(page => Check(page, known, ids)).ToList();
    }

    private static WrittenPage Read(string folder, string address)
    {
        using var document = new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(folder, address)));
        var ids = document.All.Select(e => e.Id ?? "").Where(id => id.Length > 0).ToList();
        return new WrittenPage(
            address,
            ids.ToHashSet(),
            [.. ids.GroupBy(id => id).Where(g => g.Count() > 1).Select(g => g.Key)],
            document.QuerySelectorAll("h1").Length,
            [.. document.All.OfType<IHtmlAnchorElement>().Select(a => a.GetAttribute("href")).OfType<string>(),
             .. Values(document, "link[href]", "href"), .. Values(document, "script[src], img[src]", "src")],
            [.. Loading.SelectMany(name => Values(document, $"[{name}]", name)),
             .. Values(document, "link[rel=stylesheet][href], link[rel=icon][href]", "href")],
            [.. document.All.SelectMany(e => e.Attributes)
                .Where(a => Addresses.Contains(a.Name) || a.Name.StartsWith("on", StringComparison.Ordinal))
                .Select(a => a.Name.StartsWith("on", StringComparison.Ordinal) ? $"{a.Name}={a.Value}" : a.Value)]);
    }

    private static IEnumerable<string> Values(IParentNode document, string selector, string attribute) =>
        document.QuerySelectorAll(selector).Select(e => e.GetAttribute(attribute)).OfType<string>();

    private static IEnumerable<Diagnostic> Check(
        WrittenPage page, HashSet<string> files, Dictionary<string, IReadOnlySet<string>> ids)
    {
        foreach (var id in page.IdsTwice)
            yield return Of(PublishingCodes.IdTwice, page, ("id", id));
        if (page.MainHeadings != 1)
            yield return Of(PublishingCodes.Headings, page,
                ("count", page.MainHeadings.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        foreach (var link in page.Links.Distinct().Where(l => !SiteLink.Leads(page.Address, l, files, ids)))
            yield return Of(PublishingCodes.BrokenLink, page, ("target", link));
        foreach (var target in page.Loaded.Distinct().Where(SiteLink.IsFromElsewhere))
            yield return Of(PublishingCodes.FromElsewhere, page, ("target", target));
        foreach (var target in page.Addresses.Distinct().Where(SiteLink.CouldRunScript))
            yield return Of(PublishingCodes.UnsafeAddress, page, ("target", target));
    }

    private static Diagnostic Of(DiagnosticCode code, WrittenPage page, params (string, string)[] values) =>
        Diagnostic.Of(code, SourceSpan.None, [("page", page.Address), .. values]);

    private sealed record WrittenPage(
        string Address, IReadOnlySet<string> Ids, IReadOnlyList<string> IdsTwice, int MainHeadings,
        IReadOnlyList<string> Links, IReadOnlyList<string> Loaded, IReadOnlyList<string> Addresses);
}
