using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>The Chromium that is installed on this machine; nothing is ever downloaded.</summary>
internal static class Chromium
{
    /// <summary>The plain program before the shell script that some systems put around it.</summary>
    public static readonly IReadOnlyList<string> Places =
    [
        "/usr/lib/chromium/chromium", "/usr/bin/chromium", "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable",
    ];

    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    public static string Find(IEnumerable<string> places) => places.FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException("No Chromium is installed. Run: bash tests/run, which installs it.");

    public static Task<IBrowser> StartAsync(IPlaywright playwright) => playwright.Chromium.LaunchAsync(
        new BrowserTypeLaunchOptions { ExecutablePath = Find(Places), Headless = true, Args = Flags });
}
