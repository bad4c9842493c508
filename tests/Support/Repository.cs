namespace CareSheets.Tests.Support;

/// <summary>The repository that the tests stand in, found by its solution file.</summary>
internal static class Repository
{
    public static readonly string Root = Find();

    public static string At(params string[] parts) => Path.Combine([Root, .. parts]);

    public static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(At(folder.Split('/')), pattern, SearchOption.AllDirectories)
            .Where(path => !path.Split('/', '\\').Any(part => part is "obj" or "bin"))
            .Order(StringComparer.Ordinal);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CareSheets.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
