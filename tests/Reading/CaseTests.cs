using CareSheets.Tests.Support;

namespace CareSheets.Tests.Reading;

/// <summary>
/// Each case in tests/Cases is content as a person might leave it, and beside it, word for word,
/// what the program says. A case is a folder laid over the toy content, or one file NAME.md that
/// takes the place of the toy's danio-rerio.md. To accept new wording: bash tests/run approve.
/// </summary>
public sealed class CaseTests
{
    public static TheoryData<string> Cases()
    {
        var names = Names().ToList();
        Assert.True(names.Count > 60, $"Only {names.Count} cases were found.");
        return [.. names];
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_program_says_what_the_case_expects(string name)
    {
        using var workshop = new Workshop();
        var path = Repository.At("tests", "Cases", name);
        if (Directory.Exists(path))
            workshop.Overlay(path);
        else
            File.Copy(path + ".md", workshop["content/species/danio-rerio.md"], overwrite: true);
        var expected = Directory.Exists(path) ? Path.Combine(path, "diagnostics.txt") : path + ".diagnostics.txt";
        Approve.Text(workshop.RunSite().Printed, expected);
    }

    public static IEnumerable<string> Names()
    {
        var root = Repository.At("tests", "Cases");
        foreach (var topic in Directory.GetDirectories(root).Order(StringComparer.Ordinal))
        {
            var cases = Directory.GetFiles(topic, "*.md").Select(f => f[..^3]).Concat(Directory.GetDirectories(topic));
            foreach (var path in cases.Order(StringComparer.Ordinal))
                yield return Path.GetRelativePath(root, path).Replace('\\', '/');
        }
    }
}
