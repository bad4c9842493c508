using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>One page of each kind of the real site; of several the one with the most on it.</summary>
internal static class PageKinds
{
    private static readonly string[] Patterns =
    [
        "index.html", "about.html", "words.html", "species/index.html", "families/index.html", "genera/index.html",
        "new-arrivals.html", "how-well.html",
        "orders/index.html", "origins/index.html", "papers/index.html", "water.html",
        "papers/where.html",
    ];

    private static readonly string[] Folders =
    [
        "families/", "genera/", "orders/", "origins/water-", "origins/", "papers/sheet-", "papers/card-",
        "papers/docket-", "papers/notes-",
    ];

    public static IReadOnlyList<string> All { get; } =
    [
        .. Patterns,
        .. Folders.Select(folder => Fullest(address => address.StartsWith(folder, StringComparison.Ordinal) &&
            !Patterns.Contains(address))),
        Fullest(address => IsSpecies(address) && IsEntry(address)),
        Fullest(address => IsSpecies(address) && !IsEntry(address)), // a former name
    ];

    public static TheoryData<string> Data() => [.. All];

    private static bool IsSpecies(string address) =>
        address.StartsWith("species/", StringComparison.Ordinal) && address != "species/index.html";

    private static bool IsEntry(string address) =>
        RealSite.Entries.Contains(Path.GetFileNameWithoutExtension(address));

    private static string Fullest(Func<string, bool> isKind) => RealSite.Pages
        .Where(p => isKind(p.Key))
        .OrderByDescending(p => p.Value.DocumentElement.OuterHtml.Length).ThenBy(p => p.Key, StringComparer.Ordinal)
        .First().Key;
}
