namespace CareSheets.Bench;

/// <summary>Made-up content of any size: the demonstration's entries again and again under invented names.</summary>
internal static class MadeUpContent
{
    public static void Write(string repository, string folder, int count)
    {
        var species = Path.Combine(folder, "content", "species");
        Directory.CreateDirectory(species);
        foreach (var path in Directory.GetFiles(Path.Combine(repository, "content"), "*.yaml"))
            File.Copy(path, Path.Combine(folder, "content", Path.GetFileName(path)), true);
        var texts = Directory.GetFiles(Path.Combine(repository, "content", "species")).Order(StringComparer.Ordinal)
            .Select(File.ReadAllText).ToList();
        for (var i = 0; i < count; i++)
        {
            var epithet = "madeup" + Letters(i);
            var text = texts[i % texts.Count];
            File.WriteAllText(Path.Combine(species, Slug(text, epithet)), Renamed(text, epithet));
        }
    }

    /// <summary>The same entry under another epithet, without former names and links, which would clash.</summary>
    private static string Renamed(string text, string epithet)
    {
        var lines = text.Split('\n').ToList();
        var genus = Genus(text);
        var start = lines.FindIndex(l => l.StartsWith("formerNames:", StringComparison.Ordinal));
        if (start >= 0)
        {
            var end = start + 1;
            while (lines[end].StartsWith(' '))
                end++;
            lines.RemoveRange(start, end - start);
        }
        return string.Join('\n', lines.Select(l =>
            l.StartsWith("scientificName:", StringComparison.Ordinal) ? $"scientificName: {genus} {epithet}"
            : l.StartsWith("originalNameUsage:", StringComparison.Ordinal) ? $"originalNameUsage: {genus} {epithet}"
            : l.StartsWith("scientificNameAuthorship:", StringComparison.Ordinal)
                ? "scientificNameAuthorship: Made, 1900"
            : System.Text.RegularExpressions.Regex.Replace(l, @"\]\([a-z-]+\.md\)", "](https://example.org/)")));
    }

    private static string Genus(string text) =>
        text.Split('\n').First(l => l.StartsWith("scientificName:", StringComparison.Ordinal)).Split(' ')[1];

    private static string Slug(string text, string epithet) => $"{Genus(text).ToLowerInvariant()}-{epithet}.md";

    private static string Letters(int number) => string.Concat(
        number.ToString("0000", System.Globalization.CultureInfo.InvariantCulture).Select(c => (char)('a' + c - '0')));
}
