using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>
/// The words of a theme: YAML files of groups, each of names with their text. Told apart by
/// <c>group.name</c>.
/// </summary>
public static class WordsReader
{
    /// <summary>Words of the templates, then the sentences that the program fills.</summary>
    public static readonly IReadOnlyList<string> Names = ["words.yaml", "sentences.yaml"];

    /// <summary>Nothing when a file can't be read; then the bag says why.</summary>
    public static IReadOnlyDictionary<string, string>? Read(string themeFolder, DiagnosticBag bag)
    {
        var words = new Dictionary<string, string>();
        foreach (var name in Names)
        {
            var path = Path.Combine(themeFolder, name);
            if (TextFileReader.Read(path, path.Replace('\\', '/'), bag) is not { } file ||
                new YamlReader(file, 1, bag).Read(file.Text) is not { } root)
                return null;
            foreach (var group in root.Fields)
                Add(words, group);
        }
        return words;
    }

    private static void Add(Dictionary<string, string> words, YamlField group)
    {
        foreach (var field in new Fields(group.Value as YamlMapping).All)
            words[$"{group.Key.Text}.{field.Key.Text}"] = Fields.Text(field.Value)?.Value ?? "";
    }
}
