using CareSheets.Publishing;

namespace CareSheets.Tests.Publishing;

/// <summary>The check of a written site, on made-up sites: a good one is clean, every fault is found.</summary>
public sealed class SiteCheckTests : IDisposable
{
    private const string Good = """
        <!doctype html><html lang="en"><head><title>t</title><link rel="stylesheet" href="site.css">
        <link rel="icon" href="data:,"></head><body><h1 id="top">Fish</h1>
        <a href="#top">up</a> <a href="species/a.html#water">a</a> <a href="index.html">here</a>
        <a href="https://shop.example/">web</a> <a href="mailto:a@b.example">post</a>
        <img src="fish.svg" alt="a fish"><script src="filter.js"></script></body></html>
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-check-").FullName;

    public SiteCheckTests()
    {
        Put("index.html", Good);
        Put("species/a.html",
            "<h1>A</h1><p id=water>w</p><a href='../index.html#top'>home</a><a href='./a.html'>me</a>");
        Put("site.css", "h1 { color: black }");
        Put("fish.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
        Put("filter.js", "");
    }

    [Fact]
    public void A_good_site_is_clean() => Assert.Empty(SiteCheck.Check(_folder).Select(d => d.Message));

    [Theory]
    [InlineData("PB703", "<a href='nothing.html'>x</a>")]
    [InlineData("PB703", "<a href='species/'>x</a>")]
    [InlineData("PB703", "<a href='species/A.html'>x</a>")]
    [InlineData("PB703", "<a href='species/a.html#fire'>x</a>")]
    [InlineData("PB703", "<a href='#nowhere'>x</a>")]
    [InlineData("PB703", "<a href='#'>x</a>")]
    [InlineData("PB703", "<a href='../outside.html'>x</a>")]
    [InlineData("PB703", "<a href='site.css/../../x'>x</a>")]
    [InlineData("PB703", "<img src='nothing.png' alt=''>")]
    [InlineData("PB703", "<script src='nothing.js'></script>")]
    [InlineData("PB703", "<link rel=stylesheet href='nothing.css'>")]
    [InlineData("PB703", "<svg><use href='nothing.svg#a'/></svg>")]
    [InlineData("PB703", "<map><area href='nothing.html' alt=x></map>")]
    [InlineData("PB703", "<form action='nothing.html'></form>")]
    [InlineData("PB703", "<a href='/index.html'>x</a>")] // leads out of a site that stands in a folder or on a disk
    [InlineData("PB704", "<p id=a></p><p id=a></p>")]
    [InlineData("PB704", "<p id=top></p>")]
    [InlineData("PB705", "<h1>another</h1>")]
    [InlineData("PB706", "<img src='https://cdn.example/x.png' alt=''>")]
    [InlineData("PB706", "<img src='//cdn.example/x.png' alt=''>")]
    [InlineData("PB706", "<img srcset='fish.svg 1x, https://cdn.example/x.png 2x' alt=''>")]
    [InlineData("PB706", "<script src='http://cdn.example/x.js'></script>")]
    [InlineData("PB706", "<link rel=stylesheet href='https://cdn.example/x.css'>")]
    [InlineData("PB706", "<link rel=preload href='https://cdn.example/x.woff2' as=font>")]
    [InlineData("PB706", "<iframe src='https://cdn.example/'></iframe>")]
    [InlineData("PB706", "<object data='https://cdn.example/x.svg'></object>")]
    [InlineData("PB706", "<video poster='https://cdn.example/x.png'></video>")]
    [InlineData("PB706", "<svg><image href='https://cdn.example/x.png'/></svg>")]
    [InlineData("PB706", "<p style='background: url(https://cdn.example/x.png)'>x</p>")]
    [InlineData("PB706", "<style>@import 'https://cdn.example/x.css';</style>")]
    [InlineData("PB707", "<a href='javascript:alert(1)'>x</a>")]
    [InlineData("PB707", "<a href=' Java\tScript:alert(1)'>x</a>")]
    [InlineData("PB707", "<a href='vbscript:x'>x</a>")]
    [InlineData("PB707", "<a href='data:text/html,x'>x</a>")]
    [InlineData("PB707", "<p onclick='x()'>x</p>")]
    [InlineData("PB707", "<svg onload='x()'></svg>")]
    [InlineData("PB707", "<form action='javascript:x'></form>")]
    [InlineData("PB707", "<meta http-equiv=refresh content='0;url=javascript:x'>")]
    public void A_fault_in_a_page_is_found(string code, string fault)
    {
        Put("index.html", Good.Replace("</body>", fault + "</body>", StringComparison.Ordinal));
        Assert.Contains(code, SiteCheck.Check(_folder).Select(d => d.Code.Id));
    }

    [Fact]
    public void A_page_without_a_main_heading_is_found()
    {
        Put("species/b.html", "<h2>B</h2>");
        var told = Assert.Single(SiteCheck.Check(_folder));
        Assert.Equal("The page species/b.html has 0 main headings instead of one", told.Message);
    }

    [Theory]
    [InlineData("body { background: url(https://cdn.example/x.png) }")]
    [InlineData("@import '//cdn.example/x.css';")]
    public void A_style_sheet_that_loads_from_elsewhere_is_found(string css)
    {
        Put("site.css", css);
        Assert.Contains("PB706", SiteCheck.Check(_folder).Select(d => d.Code.Id));
    }

    [Theory]
    [InlineData("<a href='species/%61.html'>x</a>")]
    [InlineData("<p id='café'></p><a href='#caf%C3%A9'>x</a>")]
    [InlineData("<a href='index.html?from=a#top'>x</a>")]
    [InlineData("<a href='once=upon.html'>x</a>")]
    public void A_link_that_browsers_follow_is_no_fault(string link)
    {
        Put("once=upon.html", "<h1>x</h1>");
        Put("index.html", Good.Replace("</body>", link + "</body>", StringComparison.Ordinal));
        Assert.Empty(SiteCheck.Check(_folder).Select(d => d.Message));
    }

    [Fact]
    public void Every_fault_of_a_site_is_told_in_one_run()
    {
        Put("index.html", "<h1>a</h1><h1>b</h1><a href='x'>x</a><a href='y'>y</a>");
        Put("species/a.html", "<p id=a></p><p id=a></p>");
        Assert.Equal(["PB705", "PB703", "PB703", "PB704", "PB705"], SiteCheck.Check(_folder).Select(d => d.Code.Id));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Put(string address, string text)
    {
        var path = Path.Combine(_folder, address);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
