using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Browser;

/// <summary>One browser and one server of the real site for all tests that need them.</summary>
public sealed class BrowserFixture : IAsyncLifetime, IDisposable
{
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
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            JavaScriptEnabled = scripts,
            ReducedMotion = ReducedMotion.Reduce,
        });
        return await context.NewPageAsync();
    }
}

/// <summary>Tests that share the browser; they run one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<BrowserFixture>
{
    public const string Name = "browser";
}
