namespace CareSheets.Commands;

/// <summary>A browser of this machine that prints pages as PDF; nothing is ever downloaded.</summary>
internal static class InstalledBrowser
{
    private static readonly string[] Names =
    [
        "chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge",
        "microsoft-edge-stable",
    ];

    private static readonly string[] OnWindows =
    [
        @"Google\Chrome\Application\chrome.exe", @"Microsoft\Edge\Application\msedge.exe",
        @"Chromium\Application\chrome.exe",
    ];

    private static readonly string[] OnMac =
    [
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    public const string None =
        "No browser that prints PDF was found. Install Chromium, Chrome or Edge, name one with --browser, " +
        "or open the sheets in your browser and print them there at 100 %.";

    /// <summary>Everywhere that one may be, the likeliest first.</summary>
    public static IEnumerable<string> Places()
    {
        // The plain program before the shell script that some systems put around it.
        yield return "/usr/lib/chromium/chromium";
        var path = Environment.GetEnvironmentVariable("PATH") ?? "";
        foreach (var folder in path.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (var name in Names)
                yield return Path.Combine(folder, name);
        }
        foreach (var place in OnMac)
            yield return place;
        foreach (var variable in new[] { "ProgramFiles", "ProgramFiles(x86)", "LocalAppData" })
        {
            if (Environment.GetEnvironmentVariable(variable) is not { Length: > 0 } folder)
                continue;
            foreach (var program in OnWindows)
                yield return Path.Combine(folder, program);
        }
    }

    public static string? Find(IEnumerable<string> places) => places.FirstOrDefault(File.Exists);
}
