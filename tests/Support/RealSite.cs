using System.Diagnostics;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace CareSheets.Tests.Support;

/// <summary>
/// The site of the repository's own content, made once by the program as a shell runs it, and only
/// read after that. The folder is gone when the tests end.
/// </summary>
internal static class RealSite
{
    private static readonly Lazy<string> Made = new(() => Make("en_GB.UTF-8", Repository.Root));

    private static readonly Lazy<IReadOnlyDictionary<string, IHtmlDocument>> Read = new(ReadAll);

    public static string Folder => Made.Value;

    /// <summary>Every page and paper by its address.</summary>
    public static IReadOnlyDictionary<string, IHtmlDocument> Pages => Read.Value;

    /// <summary>Names of the entries, from their files.</summary>
    public static IReadOnlyList<string> Entries { get; } =
    [
        .. Repository.Files("content/species", "*.md").Select(path => Path.GetFileNameWithoutExtension(path)),
    ];

    /// <summary>Runs the program anew into a folder that is deleted when the tests end.</summary>
    public static string Make(string language, string from)
    {
        var folder = Directory.CreateTempSubdirectory("caresheets-real-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        Run(language, from, "site", "--content", Repository.At("content"),
            "--theme", Repository.At("themes", "riffle"), "--into", folder, "--quiet");
        return folder;
    }

    /// <summary>The site of the same content with a change, which the folder that is given takes.</summary>
    public static string MakeWith(Action<string> change)
    {
        var root = Directory.CreateTempSubdirectory("caresheets-real-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(root, recursive: true);
        foreach (var part in new[] { "content", "schema" })
            Workshop.Copy(Repository.At(part), Path.Combine(root, part));
        change(Path.Combine(root, "content"));
        var folder = Path.Combine(root, "published");
        Run("en_GB.UTF-8", root, "site", "--theme", Repository.At("themes", "riffle"), "--into", folder, "--quiet");
        return folder;
    }

    private static void Run(string language, string from, params string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        var start = new ProcessStartInfo("dotnet", ["exec", program, .. arguments])
        {
            WorkingDirectory = from,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["LANG"] = language, ["LC_ALL"] = language, ["TZ"] = "Pacific/Kiritimati" },
        };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var told = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, told + errors.GetAwaiter().GetResult());
    }

    private static Dictionary<string, IHtmlDocument> ReadAll() =>
        Directory.GetFiles(Folder, "*.html", SearchOption.AllDirectories).AsParallel()
            .Select(path => (
                Address: Path.GetRelativePath(Folder, path).Replace('\\', '/'),
                Document: new HtmlParser().ParseDocument(File.ReadAllText(path))))
            .ToDictionary(p => p.Address, p => p.Document);
}
