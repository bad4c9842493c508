using System.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Commands;

/// <summary>The program as a shell sees it: what it prints where, and what it returns.</summary>
public sealed class CommandLineTests
{
    [Fact]
    public void A_clean_site_returns_0_and_says_where_it_is()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "site");
        Assert.Equal(0, code);
        Assert.Contains("The site is in published:", text, StringComparison.Ordinal);
        Assert.True(File.Exists(workshop["published/index.html"]));
    }

    [Fact]
    public void A_mistake_returns_1_and_leaves_no_site()
    {
        using var workshop = new Workshop();
        workshop.Replace("content/species/danio-rerio.md", "lid: yes", "lid: shut");
        var (code, text, _) = Call(workshop, "site");
        Assert.Equal(1, code);
        Assert.StartsWith("content/species/danio-rerio.md(19,60): error SC203: ", text, StringComparison.Ordinal);
        Assert.False(Directory.Exists(workshop["published"]));
    }

    [Theory]
    [InlineData("sight")]
    [InlineData("site --colour")]
    [InlineData("site --units imperial")]
    [InlineData("relatives no-such-fish")]
    [InlineData("proof no-such-fish")]
    [InlineData("site --into /")]
    [InlineData("site --into ")]
    public void Wrong_use_returns_2_and_says_so_on_standard_error(string call)
    {
        using var workshop = new Workshop();
        var (code, text, errors) = Call(workshop, call.Split(' '));
        Assert.Equal(2, code);
        Assert.Equal("", text);
        Assert.NotEqual("", errors.Trim());
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named_RD120()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "site", "--content", "nowhere");
        Assert.Equal(1, code);
        Assert.Contains("error RD120: There is no folder nowhere", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_has_examples()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "site", "--help");
        Assert.Equal(0, code);
        Assert.Contains("EXAMPLES", text, StringComparison.Ordinal);
        Assert.Contains("--into", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Proof_tells_of_the_named_entry_only()
    {
        using var workshop = new Workshop();
        workshop.Replace("content/species/danio-rerio.md", "lid: yes", "lid: shut");
        Assert.Equal(1, Call(workshop, "proof").Code);
        Assert.Equal(1, Call(workshop, "proof", "Danio rerio").Code);
        Assert.Equal(0, Call(workshop, "proof", "betta-splendens").Code);
    }

    [Fact]
    public void Json_is_all_that_stands_on_standard_output()
    {
        using var workshop = new Workshop();
        var (_, text, _) = Call(workshop, "site", "--json");
        using var json = System.Text.Json.JsonDocument.Parse(text);
        Assert.Equal(0, json.RootElement.GetProperty("errors").GetInt32());
        Assert.True(json.RootElement.GetProperty("written").GetInt32() > 20);
    }

    [Fact]
    public void No_colours_reach_a_file()
    {
        using var workshop = new Workshop();
        workshop.Replace("content/species/danio-rerio.md", "lid: yes", "lid: shut");
        Assert.DoesNotContain('\u001b', Call(workshop, "site").Text);
    }

    [Fact]
    public void Relatives_of_a_former_name_are_told()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "relatives", "Brachydanio rerio");
        Assert.Equal(0, code);
        Assert.Contains("Danio margaritatus", text, StringComparison.Ordinal);
        Assert.Contains("68–77 °F", text, StringComparison.Ordinal);
    }

    private static (int Code, string Text, string Errors) Call(Workshop workshop, params string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        var start = new ProcessStartInfo("dotnet", ["exec", program, .. arguments])
        {
            WorkingDirectory = workshop.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        Directory.CreateDirectory(workshop["themes"]);
        if (Directory.Exists(workshop["theme"]))
            Directory.Move(workshop["theme"], workshop["themes/riffle"]);
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text, errors.GetAwaiter().GetResult());
    }
}
