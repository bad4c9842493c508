using System.Globalization;
using CareSheets.Diagnostics;

namespace CareSheets.Reading;

/// <summary>
/// Days and times of content files. The schema sees their form; only the calendar knows whether
/// they exist.
/// </summary>
internal sealed class DateBinder(DiagnosticBag bag)
{
    private const string DayForm = "yyyy-MM-dd";
    private const string MomentForm = "yyyy-MM-dd HH:mm";

    public Sourced<DateOnly>? Day(Sourced<string>? text, string path)
    {
        if (text is null)
            return null;
        if (DateOnly.TryParseExact(
            text.Value, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return text.With(day);
        Tell(text, DayForm, path);
        return null;
    }

    public Sourced<DateTime>? Moment(Sourced<string>? text, string path)
    {
        if (text is null)
            return null;
        if (DateTime.TryParseExact(
            text.Value, MomentForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
            return text.With(moment);
        Tell(text, MomentForm, path);
        return null;
    }

    /// <summary>Only of what looks like a date: of anything else the schema has told.</summary>
    private void Tell(Sourced<string> text, string form, string path)
    {
        var looksRight = text.Value.Length == form.Length &&
            text.Value.Zip(form).All(c => char.IsAsciiDigit(c.First) == char.IsAsciiLetter(c.Second));
        if (looksRight)
            bag.Add(Diagnostic.Of(SchemaCodes.NoSuchDay, text.Span, ("value", text.Value)).At(path));
    }
}
