using System.Text.Json;
using CareSheets.Diagnostics;
using NJsonSchema;

namespace CareSheets.Tests.Diagnostics;

/// <summary>
/// SARIF as printed, held against the schema of SARIF 2.1.0 that the package Sarif.Sdk 5.8.0 ships.
/// </summary>
public sealed class DiagnosticSarifTests
{
    private static readonly SourceSpan Place = new("content/species/ä b.md", new(3, 5), new(3, 9));

    private static readonly Diagnostic Odd = Diagnostic.Of(
            RelativesCodes.Apart, Place, ("label", "pH"), ("value", "9.0"), ("relatives", "its family"),
            ("low", "6"), ("high", "7"), ("unit", ""), ("field", "ph"))
        .With([new RelatedSpan(new("content/species/c.md", new(2, 1), new(2, 2)), "c: 6.5")]);

    [Fact]
    public void It_is_valid_by_the_published_schema()
    {
        var text = DiagnosticSarif.Print(
            [Odd, Diagnostic.Of(ReadingCodes.NoEntries, SourceSpan.None, ("folder", "x"))],
            [new AcceptedDiagnostic(Odd, "It lives in hot springs.")]);
        Assert.Empty(Schema().Validate(text));
    }

    [Fact]
    public void The_schema_would_notice_a_mistake()
    {
        var text = DiagnosticSarif.Print([Odd], []).Replace("\"warning\"", "\"grave\"", StringComparison.Ordinal);
        Assert.NotEmpty(Schema().Validate(text));
    }

    [Fact]
    public void Places_are_told_in_utf16_columns_and_addresses_are_escaped()
    {
        using var json = JsonDocument.Parse(DiagnosticSarif.Print([Odd], []));
        var run = json.RootElement.GetProperty("runs")[0];
        Assert.Equal("utf16CodeUnits", run.GetProperty("columnKind").GetString());
        var place = run.GetProperty("results")[0].GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.Equal(
            "content/species/%C3%A4%20b.md", place.GetProperty("artifactLocation").GetProperty("uri").GetString());
        var region = place.GetProperty("region");
        Assert.Equal((3, 5, 9), (
            region.GetProperty("startLine").GetInt32(), region.GetProperty("startColumn").GetInt32(),
            region.GetProperty("endColumn").GetInt32()));
    }

    [Fact]
    public void Only_accepted_ones_are_suppressed_and_with_their_reason()
    {
        using var json = JsonDocument.Parse(DiagnosticSarif.Print([Odd], [new AcceptedDiagnostic(Odd, "So it is.")]));
        var results = json.RootElement.GetProperty("runs")[0].GetProperty("results");
        Assert.Equal(0, results[0].GetProperty("suppressions").GetArrayLength());
        var suppression = Assert.Single(results[1].GetProperty("suppressions").EnumerateArray());
        Assert.Equal("inSource", suppression.GetProperty("kind").GetString());
        Assert.Equal("So it is.", suppression.GetProperty("justification").GetString());
    }

    private static JsonSchema Schema() => JsonSchema.FromFileAsync(
        Path.Combine(AppContext.BaseDirectory, "Schemata", "sarif-2.1.0.json")).GetAwaiter().GetResult();
}
