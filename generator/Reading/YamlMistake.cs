using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>
/// Why a file could not be read as YAML, in a fish keeper's words: the parser names what it was about, the line shows
/// what a person did.
/// </summary>
/// <param name="Reason">What is wrong, to follow "This is not YAML:".</param>
internal sealed partial record YamlMistake(string Reason, string Remedy)
{
    private const string Quotes = "Put quotes round the whole text.";

    /// <param name="lines">Of the YAML, as it was written.</param>
    /// <param name="line">Counted from 1, as the parser tells it.</param>
    /// <param name="column">Counted from 1.</param>
    /// <param name="said">What the parser says.</param>
    public static YamlMistake Of(IReadOnlyList<string> lines, int line, int column, string said)
    {
        var text = line >= 1 && line <= lines.Count ? lines[line - 1] : "";
        bool Says(string words) => said.Contains(words, StringComparison.OrdinalIgnoreCase);
        if (Says("quoted scalar"))
            return new("the quote that opens here has no end", "Put the same quote at the end of the text.");
        if (Says("is not closed"))
            return new("a bracket, brace or quote here or just before has no end",
                "Close it: [one, two] or { name: value }.");
        if (Says("cannot start any token"))
            return new($"no text can begin with {At(text, column)}", Quotes);
        if (Says("invalid mapping") || Says("mapping values are not allowed"))
            return SecondColon(text) ?? Indent(lines, line) ?? Unknown(said);
        if (Says("node content"))
            return new("something is missing here, or a sign is one too many",
                "Look for a bracket, a comma or a colon before it.");
        if (Says("'-' indicator"))
            return InList(text, lines, line) ?? Unknown(said);
        if (Says("expected key") || Says("simple key") || Says("expected ':'"))
            return Field(text) ?? Indent(lines, line) ?? Unknown(said);
        return Unknown(said);
    }

    private static YamlMistake Unknown(string said) =>
        new($"{char.ToLowerInvariant(said[0])}{said[1..]}",
            "A text with a colon, a hash or a bracket needs quotes around it.");

    private static YamlMistake? SecondColon(string text) => TwoColons().Match(text) is { Success: true } two
        ? new("this line has two colons", $"Put quotes round the text: {Excerpt.Of(two.Groups[1].Value.Trim())}: " +
            $"\"{Excerpt.Of(two.Groups[2].Value.Trim())}\"")
        : null;

    private static YamlMistake? InList(string text, IReadOnlyList<string> lines, int line)
    {
        var trimmed = text.TrimStart();
        if (trimmed.StartsWith("- \"", StringComparison.Ordinal) || trimmed.StartsWith("- '", StringComparison.Ordinal))
            return new("text goes on after a closing quote", "Put the whole text in quotes, or none of it.");
        if (trimmed.StartsWith("- ", StringComparison.Ordinal))
            return Indent(lines, line);
        return trimmed.StartsWith('-')
            ? new("no space stands after the hyphen", $"Write - {Excerpt.Of(trimmed[1..])}")
            : new("a list goes on here, and this line has no hyphen",
                "Begin it with a hyphen and a space; what goes on with the line above stands further in.");
    }

    private static YamlMistake? Field(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.StartsWith("- ", StringComparison.Ordinal))
            return null;
        var colon = trimmed.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
            return new("this line has no colon", "Write a field as name: value.");
        var (name, value) = (Excerpt.Of(trimmed[..colon]), trimmed[(colon + 1)..]);
        return value.Length > 0 && value[0] != ' '
            ? new("no space stands after the colon", $"Write {name}: {Excerpt.Of(value)}") : null;
    }

    /// <summary>Fields that belong together begin in one column.</summary>
    private static YamlMistake? Indent(IReadOnlyList<string> lines, int line)
    {
        if (line < 1 || line > lines.Count)
            return null;
        var isItem = IsItem(lines[line - 1]);
        var before = lines.Take(line - 1).LastOrDefault(l =>
            l.Trim() is { Length: > 0 } and not ['#', ..] && (!isItem || IsItem(l)));
        if (before is null || SpacesOf(before) == SpacesOf(lines[line - 1]))
            return null;
        var (here, above) = (Number(SpacesOf(lines[line - 1])), Number(SpacesOf(before)));
        return new($"this line begins with {here}, the {(isItem ? "item" : "line")} above with {above}",
            "What belongs together begins with the same number of spaces; what stands inside takes two more.");
    }

    private static bool IsItem(string line) => line.TrimStart().StartsWith("- ", StringComparison.Ordinal);

    private static int SpacesOf(string line) => line.Length - line.TrimStart(' ').Length;

    private static string Number(int spaces) => spaces switch
    {
        0 => "none",
        1 => "1 space",
        _ => string.Create(CultureInfo.InvariantCulture, $"{spaces} spaces"),
    };

    private static string At(string text, int column) =>
        column >= 1 && column <= text.Length ? text[column - 1].ToString() : "this sign";

    [GeneratedRegex(@"^(\s*(?:- )?[^:""'#\[{]+):\s+([^""'\[{].*:(?:\s.*)?)$", RegexOptions.NonBacktracking)]
    private static partial Regex TwoColons();
}
