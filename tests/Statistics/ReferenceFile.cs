using System.Globalization;
using Xunit;

namespace CareSheets.Tests.Statistics;

/// <summary>A table of published or computed check values beside the tests.</summary>
internal static class ReferenceFile
{
    public static string PathOf(string name)
    {
        var relative = Path.Combine("tests", "Statistics", "Reference", name);
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, relative)))
        {
            folder = folder.Parent;
        }

        return Path.Combine(
            folder?.FullName ?? throw new FileNotFoundException(relative), relative);
    }

    /// <summary>The rows under the heading row; lines that start with # are comments.</summary>
    public static IReadOnlyList<string[]> Rows(string name)
    {
        var rows = File.ReadLines(PathOf(name))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Skip(1)
            .Select(line => line.Split(','))
            .ToArray();
        Assert.NotEmpty(rows);
        return rows;
    }

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
