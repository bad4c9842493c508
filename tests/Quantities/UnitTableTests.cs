using System.Text.RegularExpressions;
using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

/// <summary>
/// The tables of units that writers read, in schema/README.md, against the catalogue.
/// </summary>
public partial class UnitTableTests
{
    private const string Accepted = "Units you may write";
    private const string Doubtful = "Units that need another word";

    /// <summary>Dimension, unit, every spelling, example.</summary>
    private static readonly string[][] Rows = ReadTable(Accepted);

    [Fact]
    public void Every_spelling_in_the_table_is_read_as_its_unit() => Assert.All(Rows, row =>
    {
        var dimension = DimensionCatalogue.Find(Quoted(row[0]).Single())!;
        var unit = dimension.Find(Quoted(row[1]).Single())!;
        foreach (var spelling in Quoted(row[2]))
        {
            var range = QuantityText.Parse($"3–4.5 {spelling}", dimension).Value;
            Assert.Equal(unit, range.Unit);
            Assert.Equal(unit.ToCanonical(3), range.Low);
            Assert.Equal(unit.ToCanonical(4.5), range.High);
        }
    });

    [Fact]
    public void Every_example_in_the_table_can_be_read() => Assert.All(Rows, row =>
    {
        var dimension = DimensionCatalogue.Find(Quoted(row[0]).Single())!;
        var example = Quoted(row[3]).Single();
        var hasBasis = example.EndsWith("TL", StringComparison.Ordinal)
            || example.EndsWith("SL", StringComparison.Ordinal);
        var range = QuantityText.Parse(example, dimension, hasBasis).Value;
        Assert.Equal(dimension.Find(Quoted(row[1]).Single()), range.Unit);
    });

    [Fact]
    public void Every_spelling_we_read_stands_in_the_table()
    {
        var written =
            from row in Rows
            from spelling in Quoted(row[2])
            select (Quoted(row[0]).Single(), spelling);
        var known =
            from dimension in DimensionCatalogue.All
            from unit in dimension.Units
            from spelling in unit.Spellings
            select (dimension.Key, spelling);

        Assert.Equal(known.Order(), written.Order());
    }

    [Fact]
    public void Every_doubtful_spelling_in_the_table_is_refused_as_such() =>
        Assert.All(ReadTable(Doubtful), row =>
        {
            var dimension = DimensionCatalogue.Find(Quoted(row[0]).Single())!;
            Assert.All(Quoted(row[1]), spelling => Assert.Equal(
                QuantityProblemKind.AmbiguousUnit,
                QuantityText.Parse($"3 {spelling}", dimension).Problem.Kind));
            Assert.All(Quoted(row[2]), choice => Assert.NotNull(dimension.Find(choice)));
        });

    /// <summary>The cells of the first table under a heading, without its two head lines.</summary>
    private static string[][] ReadTable(string heading)
    {
        var lines = File.ReadLines(Path.Combine(Root(), "schema", "README.md"))
            .SkipWhile(line => line.TrimStart('#', ' ') != heading)
            .SkipWhile(line => !line.StartsWith('|'))
            .TakeWhile(line => line.StartsWith('|'))
            .Skip(2)
            .Select(line => line.Trim('|', ' ').Split('|'))
            .ToArray();
        Assert.NotEmpty(lines);
        return lines;
    }

    private static string[] Quoted(string cell) =>
        [.. CodeSpan().Matches(cell).Select(match => match.Groups[1].Value)];

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "CareSheets.sln")))
        {
            folder = folder.Parent
                ?? throw new DirectoryNotFoundException("No CareSheets.sln above.");
        }

        return folder.FullName;
    }

    [GeneratedRegex("`([^`]+)`", RegexOptions.CultureInvariant)]
    private static partial Regex CodeSpan();
}
