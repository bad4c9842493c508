using System.Globalization;
using CareSheets.Diagnostics;

namespace CareSheets.Publishing;

/// <summary>
/// Reads a written site as a browser would and tells what is wrong with it: links that lead
/// nowhere, ids given twice, more or less than one main heading, anything loaded from elsewhere,
/// addresses that could run a script.
/// </summary>
public static class SiteCheck
{
    public static IEnumerable<Diagnostic> Check(string folder)
    {
        var files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal).ToList();
        var pages = files.Where(f => f.EndsWith(".html", StringComparison.Ordinal))
            .AsParallel().AsOrdered()
            .Select(address => WrittenPage.Read(address, File.ReadAllText(Path.Combine(folder, address))))
            .ToList();
        var ids = pages.ToDictionary(p => p.Address, p => p.Ids);
        var known = files.ToHashSet();
        return pages.SelectMany(page => Check(page, known, ids)).Concat(files.SelectMany(f => CheckStyle(folder, f)))
            .ToList();
    }

    private static IEnumerable<Diagnostic> Check(
        WrittenPage page, HashSet<string> files, Dictionary<string, IReadOnlySet<string>> ids)
    {
        foreach (var id in page.IdsTwice)
            yield return Of(PublishingCodes.IdTwice, page.Address, ("id", id));
        if (page.MainHeadings != 1)
            yield return Of(PublishingCodes.Headings, page.Address,
                ("count", page.MainHeadings.ToString(CultureInfo.InvariantCulture)));
        foreach (var link in page.Links.Distinct().Where(l => !SiteLink.Leads(page.Address, l, files, ids)))
            yield return Of(PublishingCodes.BrokenLink, page.Address, ("target", link));
        foreach (var target in page.Loaded.Distinct().Where(SiteLink.IsFromElsewhere))
            yield return Of(PublishingCodes.FromElsewhere, page.Address, ("target", target));
        foreach (var target in page.Scripts.Distinct())
            yield return Of(PublishingCodes.UnsafeAddress, page.Address, ("target", target));
    }

    private static IEnumerable<Diagnostic> CheckStyle(string folder, string address) =>
        !address.EndsWith(".css", StringComparison.Ordinal)
            ? []
            : StyleSheet.Loads(File.ReadAllText(Path.Combine(folder, address))).Distinct()
                .Where(SiteLink.IsFromElsewhere)
                .Select(target => Of(PublishingCodes.FromElsewhere, address, ("target", target)));

    private static Diagnostic Of(DiagnosticCode code, string page, params (string, string)[] values) =>
        Diagnostic.Of(code, SourceSpan.None, [("page", page), .. values]);
}
