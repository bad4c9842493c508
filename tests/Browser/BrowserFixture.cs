using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>One browser and one server of the real site for all tests that need them.</summary>
public sealed class BrowserFixture : IAsyncLifetime, IDisposable
{
    /// <summary>No test holds more than two pages at once; what was opened before them is done with.</summary>
    private const int OpenAtMost = 3;

    private readonly Queue<IBrowserContext> _open = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private SiteServer? _server;

    public string Site => _server!.Address;

    public async Task InitializeAsync()
    {
        _server = new SiteServer(RealSite.Folder);
        _playwright = await Playwright.CreateAsync();
        _browser = await Chromium.StartAsync(_playwright);
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.CloseAsync();
    }

    public void Dispose()
    {
        _playwright?.Dispose();
        _server?.Dispose();
    }

    public async Task<IPage> OpenAsync(
        int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light, bool scripts = true)
    {
        if (_open.Count == OpenAtMost)
            await _open.Dequeue().CloseAsync();
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            JavaScriptEnabled = scripts,
            ReducedMotion = ReducedMotion.Reduce,
        });
        _open.Enqueue(context);
        return await context.NewPageAsync();
    }
}

/// <summary>Tests that share the browser; they run one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<BrowserFixture>
{
    public const string Name = "browser";
}
