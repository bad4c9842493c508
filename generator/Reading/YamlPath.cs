using System.Globalization;

namespace CareSheets.Reading;

/// <summary>Finds the node of a tree by the path that messages give, such as <c>waived[0].reason</c>.</summary>
internal static class YamlPath
{
    public static YamlNode? Find(YamlNode root, string path)
    {
        YamlNode? at = root;
        foreach (var step in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var parts = step.Split('[');
            at = (at as YamlMapping)?[parts[0]];
            foreach (var index in parts.Skip(1))
                at = (at as YamlSequence)?.Items.ElementAtOrDefault(Number(index.TrimEnd(']')));
        }
        return at;
    }

    private static int Number(string digits) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : int.MaxValue;
}
