using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>The site opened from a folder, without any server.</summary>
[Collection(BrowserTests.Name)]
public sealed class FromDiskTests(BrowserFixture browser)
{
    [Fact]
    public async Task Pages_opened_from_a_folder_are_styled_and_lead_on()
    {
        var page = await browser.OpenAsync(390, 844);
        var root = new Uri(RealSite.Folder + "/").AbsoluteUri;
        var trouble = WalkTests.Watch(page, root);
        await page.GotoAsync(root + "index.html");
        Assert.Equal("rgb(244, 247, 247)", await page.EvaluateAsync<string>(
            "getComputedStyle(document.body).backgroundColor"));
        await page.Locator(".menu__link[href$='species/index.html']").ClickAsync();
        await page.Locator("#filter-text").FillAsync("rerio");
        Assert.Equal(1, await page.Locator(".species-table__row:visible").CountAsync());
        await page.Locator(".species-table__link:visible").ClickAsync();
        await page.WaitForURLAsync("**/species/danio-rerio.html");
        await page.Locator("a[href$='card-danio-rerio.html']").ClickAsync();
        await page.WaitForURLAsync("**/papers/card-danio-rerio.html");
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>(
            "getComputedStyle(document.querySelector('.leaf__sheet')).backgroundColor"));
        Assert.Empty(trouble);
    }
}
