namespace CareSheets.Tests.Browser;

/// <summary>Tests that need a browser fail where there is none: they are never skipped.</summary>
public sealed class ChromiumTests
{
    [Fact]
    public void Without_a_browser_the_tests_fail_and_say_what_to_run()
    {
        var failure = Assert.Throws<FileNotFoundException>(() => Chromium.Find(["/nowhere/chromium"]));
        Assert.Contains("bash tests/run", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_place_that_has_one_is_taken() =>
        Assert.Equal("/bin/sh", Chromium.Find(["/nowhere/chromium", "/bin/sh", "/bin/ls"]));
}
