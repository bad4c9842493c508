namespace CareSheets.Names;

/// <summary>The small tables that come with the program; each names its origin in its first lines.</summary>
internal static class DataFile
{
    /// <summary>Cells of every line that is neither empty nor begins with #. Cells hold no commas.</summary>
    public static IEnumerable<string[]> Rows(string name)
    {
        using var stream = typeof(DataFile).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is missing from the program.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
                yield return line.Split(',');
        }
    }
}
