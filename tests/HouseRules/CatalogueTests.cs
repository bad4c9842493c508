using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Tests.Reading;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.HouseRules;

/// <summary>The catalogue of messages: every code is produced somewhere, explained, and well formed.</summary>
public sealed class CatalogueTests
{
    /// <summary>Codes whose cause is too large for a case file or too much of the machine, with their test.</summary>
    private static readonly Dictionary<string, string> ElsewhereProduced = new()
    {
        ["RD106"] = "HostileTextTests",
        ["RD113"] = "HostileTextTests",
        ["RD120"] = "CommandLineTests",
        ["PB702"] = "SiteWriterTests",
        ["SC210"] = "SchemaErrorsTests",
        ["AR951"] = "BadListTests",
        ["AR952"] = "BadListTests",
        ["AR953"] = "BadListTests",
        ["AR954"] = "BadListTests",
        ["AR955"] = "BadListTests",
        ["AR956"] = "BadListTests",
        ["AR957"] = "BadListTests",
        ["AR958"] = "ReceivingTests",
        ["AR959"] = "ReceivingTests",
        ["AR960"] = "ReceivingTests",
        ["AR961"] = "CountColumnsTests",
        ["CD904"] = "CardsCommandTests",
        ["WA901"] = "WaterCommandTests",
        ["WA902"] = "WaterCommandTests",
        ["WA903"] = "WaterCommandTests",
        ["WA904"] = "WaterCommandTests",
        ["WA905"] = "WaterCommandTests",
        ["WA906"] = "WaterCommandTests",
        ["WA907"] = "WaterCommandTests",
        ["WA908"] = "WaterCommandTests",
        ["WA909"] = "WaterCommandTests",
        ["WA910"] = "WaterCommandTests",
        ["WA911"] = "WaterCommandTests",
        ["WA914"] = "WaterCommandTests",
        ["WA915"] = "WaterCommandTests",
        ["WA916"] = "WaterCommandTests",
        ["WA917"] = "WaterCommandTests",
    };

    [Fact]
    public void Codes_are_unique_and_of_one_form()
    {
        var ids = DiagnosticCatalogue.All.Select(c => c.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Matches(
            "^(RD|SC|QT|LK|AU|PR|TP|PB|AR|WA|NM|PF|RG|CD)[1-9][0-9]{2}$", id));
    }

    [Fact]
    public void Every_code_is_produced_by_a_case()
    {
        var root = Repository.At("tests", "Cases");
        var files = Directory.GetFiles(root, "*diagnostics.txt", SearchOption.AllDirectories);
        var said = string.Concat(files.Select(File.ReadAllText));
        var silent = DiagnosticCatalogue.All.Select(c => c.Id)
            .Where(id => !said.Contains($" {id}: ", StringComparison.Ordinal));
        Assert.Equal([], silent.Except(ElsewhereProduced.Keys));
        Assert.NotEmpty(CaseTests.Names());
    }

    [Fact]
    public void A_code_that_no_case_produces_stands_in_the_test_named_for_it()
    {
        foreach (var (code, test) in ElsewhereProduced)
        {
            var files = Repository.Files("tests", test + ".cs").Select(File.ReadAllText);
            Assert.True(files.Any(text => text.Contains(code, StringComparison.Ordinal)), $"{code} in {test}");
        }
    }

    [Fact]
    public void Every_code_is_explained_to_contributors()
    {
        var text = File.ReadAllText(Repository.At("DEVELOPERS.md"));
        var ids = DiagnosticCatalogue.All.Select(c => c.Id);
        Assert.Equal([], ids.Where(id => !text.Contains($"| {id} |", StringComparison.Ordinal)));
    }

    [Fact]
    public void No_blank_is_left_in_anything_the_cases_print()
    {
        var root = Repository.At("tests", "Cases");
        var blank = new Regex(@"\{(" + string.Join('|', Blanks()) + @")\}");
        var files = Directory.GetFiles(root, "*diagnostics.txt", SearchOption.AllDirectories)
            .Where(f => !f.Contains("sentence-missing", StringComparison.Ordinal)); // tells of a blank
        foreach (var file in files)
        {
            var told = File.ReadLines(file)
                .Where(l => Regex.IsMatch(l, "(error|warning|note) [A-Z]{2}[0-9]{3}: |^    hint: "));
            Assert.DoesNotContain(told, l => blank.IsMatch(l));
        }
    }

    [Fact]
    public void Messages_state_and_do_not_blame()
    {
        Assert.All(DiagnosticCatalogue.All, c =>
        {
            Assert.DoesNotMatch("(?i)invalid|illegal|you must|please", c.Message + c.Hint);
            Assert.DoesNotMatch(@"[.!]$", c.Message);
        });
    }

    private static IEnumerable<string> Blanks() => DiagnosticCatalogue.All
        .SelectMany(c => Regex.Matches(c.Message + c.Hint, @"\{(\w+)\}").Select(m => m.Groups[1].Value)).Distinct();
}
