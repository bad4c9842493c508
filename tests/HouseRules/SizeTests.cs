using System.Text.RegularExpressions;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.HouseRules;

/// <summary>Sizes that keep a file readable in one look. The limits are our habit, not a law of nature.</summary>
public sealed partial class SizeTests
{
    private const int LongestFile = 160;
    private const int LongestTestFile = 260;
    private const int WidestLine = 120;
    private const int LongestTemplate = 130;

    [Fact]
    public void Source_files_are_short() => AssertLines("generator", "*.cs", LongestFile);

    [Fact]
    public void Test_files_are_short() => AssertLines("tests", "*.cs", LongestTestFile);

    [Fact]
    public void Templates_are_short() => AssertLines("themes", "*.html", LongestTemplate);

    [Fact]
    public void Style_sheets_are_short() => AssertLines("themes", "*.css", 170);

    [Fact]
    public void Lines_fit_a_screen()
    {
        var wide = Repository.Files("generator", "*.cs").Concat(Repository.Files("tests", "*.cs"))
            .SelectMany(f => File.ReadLines(f).Select((line, i) => (f, i, line)))
            .Where(l => l.line.Length > WidestLine)
            .Select(l => $"{l.f}({l.i + 1}): {l.line.Length}");
        Assert.Equal([], wide);
    }

    [Fact]
    public void Files_are_named_after_a_type_they_hold()
    {
        var odd = Repository.Files("generator", "*.cs")
            .Where(f => Path.GetFileName(f) != "Program.cs")
            .Where(f => !Regex.IsMatch(
                File.ReadAllText(f),
                $@"\b(class|record|struct|enum|interface) {Path.GetFileNameWithoutExtension(f).Split('.')[0]}\b"))
            .Select(f => Path.GetRelativePath(Repository.Root, f))
            .Select(f => f.Replace('\\', '/'))
            .Except(["generator/Pages/PageParts.cs", "generator/Pages/ListPages.cs", "generator/Pages/Papers.cs"]);
        Assert.Equal([], odd);
    }

    [Fact]
    public void No_type_is_called_after_nothing()
    {
        var empty = Repository.Files("generator", "*.cs")
            .SelectMany(f => EmptyName().Matches(File.ReadAllText(f)).Select(m => $"{f}: {m.Value}"));
        Assert.Equal([], empty);
    }

    private static void AssertLines(string folder, string pattern, int most)
    {
        var files = Repository.Files(folder, pattern).ToList();
        Assert.NotEmpty(files);
        Assert.All(files, f => Assert.InRange(File.ReadLines(f).Count(), 0, most));
    }

    [GeneratedRegex(@"\b(class|record|struct|interface) \w*(Manager|Helper|Util|Utils|Service|Processor|Base)\b")]
    private static partial Regex EmptyName();
}
