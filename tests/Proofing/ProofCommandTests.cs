using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using CareSheets.Tests.Support;
using NJsonSchema;

namespace CareSheets.Tests.Proofing;

/// <summary>What the command prints for programs, of the toy content with a broken and a waived rule.</summary>
public sealed class ProofCommandTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public ProofCommandTests()
    {
        _workshop.Replace("content/species/danio-rerio.md", "group: 8", "group: 4");
        var today = DateTime.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        _workshop.Replace("content/species/danio-rerio.md", "reviewed: 2026-10-02",
            $"waived: [{{ rule: small-groups-are-told, reason: They are old. }}]\nreviewed: {today}");
        _workshop.Replace("content/species/danio-margaritatus.md", "2026-10-03", today);
        _workshop.Replace("content/species/betta-splendens.md", "2026-09-30", today);
        _workshop.Replace("content/species/betta-splendens.md", "lid: tight", "lid: yes");
    }

    [Fact]
    public async Task Sarif_is_valid_and_tells_waived_rules_as_suppressed()
    {
        var (code, text) = Run("--sarif");
        Assert.Equal(1, code);
        var schema = await JsonSchema.FromFileAsync(
            Path.Combine(AppContext.BaseDirectory, "Schemata", "sarif-2.1.0.json"));
        Assert.Empty(schema.Validate(text));
        using var json = JsonDocument.Parse(text);
        var results = json.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().ToList();
        Assert.Equal(["PR802", "PR803"], results.Select(r => r.GetProperty("ruleId").GetString()));
        Assert.Equal("They are old.",
            results[1].GetProperty("suppressions")[0].GetProperty("justification").GetString());
        Assert.EndsWith("betta-splendens.md", results[0].GetProperty("locations")[0].GetProperty("physicalLocation")
            .GetProperty("artifactLocation").GetProperty("uri").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_tells_rule_and_remedy()
    {
        var (code, text) = Run("--json");
        Assert.Equal(1, code);
        Assert.Contains("fighters-live-under-a-lid", text, StringComparison.Ordinal);
        Assert.DoesNotContain("small-groups-are-told", text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_entry_is_proofed_when_it_is_named()
    {
        Assert.Equal(0, Run("danio-rerio").Code);
        Assert.Equal(1, Run("betta-splendens").Code);
    }

    /// <summary>A name of two is told in the later file; who asks for the other has to hear of it.</summary>
    [Fact]
    public void What_is_told_at_another_entry_is_shown_where_it_has_a_part()
    {
        _workshop.Replace(
            "content/species/betta-splendens.md", "originalName", "formerNames: [Danio rerio]\noriginalName");
        var (code, text) = Run("betta-splendens", "danio-margaritatus");
        Assert.Contains("LK407", text, StringComparison.Ordinal);
        Assert.Equal(1, code);
        Assert.Contains("LK407", Run("danio-rerio").Text, StringComparison.Ordinal);
        Assert.DoesNotContain("LK407", Run("danio-margaritatus").Text, StringComparison.Ordinal);
    }

    public void Dispose() => _workshop.Dispose();

    private (int Code, string Text) Run(params string[] more)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        var start = new ProcessStartInfo("dotnet", ["exec", program, "proof", .. more])
        {
            WorkingDirectory = _workshop.Folder,
            RedirectStandardOutput = true,
        };
        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text);
    }
}
