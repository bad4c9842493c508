using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Reading;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Theme;

/// <summary>The theme of the repository as files, for tests that read what a designer wrote.</summary>
internal static partial class ThemeFiles
{
    public static readonly string Folder = Repository.At("themes", "riffle");

    /// <summary>Templates by their path in the theme.</summary>
    public static IReadOnlyDictionary<string, string> Templates { get; } =
        new[] { "frames", "pages", "papers", "parts" }
            .SelectMany(part => Directory.GetFiles(Path.Combine(Folder, part), "*.html"))
            .Order(StringComparer.Ordinal)
            .ToDictionary(path => Path.GetRelativePath(Folder, path).Replace('\\', '/'), File.ReadAllText);

    /// <summary>Style sheets by name, without their comments.</summary>
    public static IReadOnlyDictionary<string, string> Styles { get; } =
        Directory.GetFiles(Path.Combine(Folder, "css"), "*.css").Order(StringComparer.Ordinal)
            .ToDictionary(path => Path.GetFileName(path), path => CssComment().Replace(File.ReadAllText(path), ""));

    /// <summary>All words, as <c>group.key</c>.</summary>
    public static IReadOnlyDictionary<string, string> Words { get; } =
        WordsReader.Read(Folder, new DiagnosticBag())
        ?? throw new InvalidOperationException("The words can't be read.");

    /// <summary>Everything between double braces.</summary>
    public static IEnumerable<string> Code(string template) =>
        Braces().Matches(template).Select(m => m.Groups[1].Value);

    public static string WithoutCode(string template) => Braces().Replace(template, "");

    public static TheoryData<string> Names()
    {
        Assert.True(Templates.Count >= 25, $"Only {Templates.Count} templates were found.");
        return [.. Templates.Keys];
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex CssComment();

    [GeneratedRegex(@"\{\{(.*?)\}\}", RegexOptions.Singleline)]
    private static partial Regex Braces();
}
