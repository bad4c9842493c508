using System.Globalization;

namespace CareSheets.Pages;

/// <summary>Dates in the theme's language, from the words of its months.</summary>
internal static class DateText
{
    public static string Of(DateOnly date, Words words) => words.Say("sentence.date",
        ("day", date.Day.ToString(CultureInfo.InvariantCulture)),
        ("month", words[$"month.{date.Month.ToString(CultureInfo.InvariantCulture)}"]),
        ("year", date.Year.ToString(CultureInfo.InvariantCulture)));
}
