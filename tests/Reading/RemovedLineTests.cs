using CareSheets.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Reading;

/// <summary>
/// An entry that lacks a line, whichever it is: the rest is checked, and nothing is made up for what is not there.
/// </summary>
public sealed class RemovedLineTests
{
    private const string Path = "content/species/danio-rerio.md";

    public static TheoryData<int> Lines() => [.. Enumerable.Range(1, 21)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Without_a_line_the_rest_is_told_and_nothing_else(int line)
    {
        using var workshop = new Workshop();
        workshop.Replace(Path, "group: 8", "group: 4");
        workshop.Replace(Path, "countryCode: [IN, BD]", "countryCode: [IN, BR]");
        var lines = File.ReadAllLines(workshop[Path]).ToList();
        var removed = lines[line];
        lines.RemoveAt(line);
        workshop.Write(Path, string.Join('\n', lines));
        var found = workshop.RunSite().Found;
        Assert.All(found, d => Assert.True(d.HasPlaces, d.Message));
        var readable = !found.Any(d => d.Code == ReadingCodes.YamlSyntax);
        Assert.Equal(readable && !removed.StartsWith("company", StringComparison.Ordinal),
            found.Any(d => d.Values.GetValueOrDefault("rule") == "small-groups-are-told"));
        Assert.Equal(readable && !removed.Contains("countryCode", StringComparison.Ordinal),
            found.Any(d => d.Values.GetValueOrDefault("rule") == "countries-suit-the-waters"));
    }

    [Fact]
    public void Without_anything_but_a_name_nothing_breaks()
    {
        using var workshop = new Workshop();
        workshop.Write(Path, "---\nscientificName: Danio rerio\n---\nIt lives for 80 years in 1 L at 2 °C.\n");
        var found = workshop.RunSite().Found;
        Assert.Equal(["SC201"], found.Where(d => d.Span.File.EndsWith("rerio.md", StringComparison.Ordinal))
            .Select(d => d.Code.Id).Distinct());
        Assert.All(found.Where(d => d.Code == SchemaCodes.Missing), d => Assert.NotEqual("", d.Hint));
    }
}
