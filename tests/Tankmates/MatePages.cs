using System.Collections.Concurrent;
using CareSheets.Tests.Browser;
using CareSheets.Tests.Support;
using Microsoft.Playwright;

namespace CareSheets.Tests.Tankmates;

/// <summary>Pages of the real site, opened from disk, and what the browser's console complains of.</summary>
internal sealed class MatePages(BrowserFixture browser)
{
    private readonly ConcurrentQueue<string> _complaints = new();

    public IReadOnlyList<string> Complaints => [.. _complaints];

    public async Task<IPage> Open(
        string address, int width = 1280, ColorScheme scheme = ColorScheme.Light, bool scripts = true)
    {
        var page = await browser.OpenAsync(width, 900, scheme, scripts);
        page.PageError += (_, error) => _complaints.Enqueue(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                _complaints.Enqueue(message.Text);
        };
        await page.GotoAsync($"file://{RealSite.Folder}/{address}");
        if (scripts && !address.StartsWith("species", StringComparison.Ordinal))
            await page.WaitForSelectorAsync(".ask:not([hidden])");
        return page;
    }
}
