using System.Collections.Concurrent;
using CareSheets.Commands;
using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Tankmates;

/// <summary>The site of the repository's own content, opened from disk in Chromium.</summary>
public sealed class MatePages : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-mates-").FullName;
    private readonly ConcurrentQueue<string> _complaints = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async Task InitializeAsync()
    {
        var settings = new SiteSettings
        {
            Content = Repository.At("content"),
            Theme = Repository.At("themes", "riffle"),
            Into = Path.Combine(_folder, "site"),
        };
        var bench = new Workbench(settings);
        Assert.NotNull(SiteCommand.Make(bench, settings, _ => { }));
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium(),
            Args = ["--no-sandbox", "--disable-background-networking"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>What the browser's console has complained of since the last time, such as its policy.</summary>
    internal IReadOnlyList<string> TakeComplaints()
    {
        var all = _complaints.ToArray();
        _complaints.Clear();
        return all;
    }

    /// <summary>A page in a context of its own.</summary>
    internal async Task<IPage> Open(string address, BrowserNewContextOptions? options = null)
    {
        var context = await _browser!.NewContextAsync(options ?? new());
        var page = await context.NewPageAsync();
        page.PageError += (_, error) => _complaints.Enqueue(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                _complaints.Enqueue($"{address}: {message.Text}");
        };
        await page.GotoAsync($"file://{_folder}/site/{address}");
        if (options?.JavaScriptEnabled != false && !address.StartsWith("species", StringComparison.Ordinal))
            await page.WaitForSelectorAsync(".ask:not([hidden])");
        return page;
    }

    private static string Chromium() =>
        new[] { "chromium", "chromium-browser", "google-chrome", "google-chrome-stable" }
            .Select(name => Path.Combine("/usr/bin", name)).First(File.Exists);
}
