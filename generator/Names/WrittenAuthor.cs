using System.Globalization;
using System.Text.RegularExpressions;

namespace CareSheets.Names;

/// <summary>Author and year as they stand behind a name, with what is wrong about their form.</summary>
internal sealed partial record WrittenAuthor(
    string Text, int? Year, string Rest, IReadOnlyList<NameProblem> Problems)
{
    /// <summary>The first year that a name of an animal can have (ICZN Code, Art. 3).</summary>
    public const int FirstYear = 1758;

    /// <summary>Nothing where the text does not begin as an author, a parenthesis or a year does.</summary>
    public static WrittenAuthor? Read(string text)
    {
        var found = Form().Match(text);
        if (!found.Success)
            return null;
        var problems = new List<NameProblem>();
        var (author, year) = (found.Groups["author"].Value.Trim(), Number(found.Groups["year"].Value));
        if (found.Groups["open"].Success != found.Groups["close"].Success)
            problems.Add(NameProblem.UnevenParentheses);
        if (year is not null && author.Length == 0)
            problems.Add(NameProblem.YearWithoutAuthor);
        else if (year is not null && !found.Groups["comma"].Success)
            problems.Add(NameProblem.NoCommaBeforeYear);
        if (year < FirstYear)
            problems.Add(NameProblem.YearTooEarly);
        return new WrittenAuthor(found.Value.Trim(), year, text[found.Length..].Trim(), problems);
    }

    private static int? Number(string year) =>
        year.Length == 0 ? null : int.Parse(year, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^(?<open>\()?(?<author>(?:(?:de|da|do|dos|du|la|le|van|von|der|den|in|ex|et|and|&|al\.)\s|" +
        @"(?:\p{Lu}[\p{L}.'’-]*|&|al\.)(?:,\s(?=\p{Lu})|(?=,)|\s|(?=\))|$))*)" +
        @"(?<comma>,\s*)?(?<year>(?:1\d|20)\d{2})?(?<close>\))?(?<=\S|\s)(?<!^)")]
    private static partial Regex Form();
}
