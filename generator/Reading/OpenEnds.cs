using System.Text.RegularExpressions;

namespace CareSheets.Reading;

/// <summary>
/// Lets a person write <c>hardness: &gt; 5 °dH</c> without quotes. To YAML a value that begins with
/// that sign is a folded text, whose header takes nothing but an indicator; a number and a unit
/// behind it can only be meant as an open end. The sign is exchanged for a private one of the same
/// length, so that columns stay true, and put back in the values.
/// </summary>
internal static partial class OpenEnds
{
    private const char Sign = '>';
    private const char Private = '\uE03E';

    public static string Shield(string yaml) =>
        OpenEnd().Replace(yaml, match => match.Value.Replace(Sign, Private));

    public static string Unshield(string value) => value.Replace(Private, Sign);

    [GeneratedRegex(@"(?<=[:\[{,] *)>=?( +[0-9.]+ *$| *[0-9.]+ *[^\s0-9.#][^#\n]*)", RegexOptions.Multiline)]
    private static partial Regex OpenEnd();
}
