using CareSheets.Commands;
using CareSheets.Relatives;
using CareSheets.Tests.Support;
using Newtonsoft.Json.Linq;

namespace CareSheets.Tests.Schema;

/// <summary>A new care range is one property of the schema, and no program changes.</summary>
public sealed class NewCareRangeTests
{
    private const string Sparkle = """
        { "description": "Sunshine of the water.", "allOf": [{ "$ref": "#/definitions/range" }],
          "x-dimension": "conductivity", "x-label": "Sparkle", "x-plausible": "0–900 µS/cm",
          "x-window": "0–500 µS/cm", "x-scale": "linear", "x-relatives": true }
        """;

    [Fact]
    public void It_is_read_shown_and_checked()
    {
        using var workshop = new Workshop();
        Declare(workshop);
        workshop.Replace("content/species/danio-rerio.md", "  flow: moderate", "  sparkle: 100–200 µS/cm");
        var run = workshop.RunSite();
        run.AssertClean();
        Assert.Contains("Sparkle", run.Page("species/danio-rerio.html"), StringComparison.Ordinal);
        Assert.Contains("100–200 µS/cm", run.Page("species/danio-rerio.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("Sparkle", run.Page("species/betta-splendens.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Its_limits_hold()
    {
        using var workshop = new Workshop();
        Declare(workshop);
        workshop.Replace("content/species/danio-rerio.md", "  flow: moderate", "  sparkle: 100–2000 µS/cm");
        var found = Assert.Single(workshop.RunSite().Found);
        Assert.Equal("QT314", found.Code.Id);
        Assert.Equal("care.sparkle", found.Path);
    }

    [Fact]
    public void Relatives_are_compared_on_it()
    {
        using var workshop = new Workshop();
        Declare(workshop);
        workshop.Replace("content/species/danio-rerio.md", "  flow: moderate", "  sparkle: 100–200 µS/cm");
        var collection = new Workbench(new ContentSettings { Content = workshop["content"] }).ReadCollection()!;
        var figure = ComparedFigure.All(collection.Figures).Single(f => f.Field == "sparkle");
        Assert.Equal("100–200 µS/cm", figure.Own(collection.Find("danio-rerio")!)?.Value.Text);
        Assert.Null(figure.Own(collection.Find("betta-splendens")!));
    }

    private static void Declare(Workshop workshop)
    {
        var path = workshop["schema/entry.schema.json"];
        var schema = JObject.Parse(File.ReadAllText(path));
        ((JObject)schema["properties"]!["care"]!["properties"]!)["sparkle"] = JObject.Parse(Sparkle);
        File.WriteAllText(path, schema.ToString());
    }
}
