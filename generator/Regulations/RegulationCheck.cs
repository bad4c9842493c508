using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Regulations;

/// <summary>Tells of entries that lists of law name, and of lists that nobody has compared for too long.</summary>
public static class RegulationCheck
{
    /// <param name="finder">The lists that bind the shop.</param>
    /// <param name="entries">What the shop has sheets of.</param>
    /// <param name="today">Lists are past their review from the day after their due day.</param>
    public static IEnumerable<Diagnostic> Check(RegulationFinder finder, IEnumerable<Entry> entries, DateOnly today) =>
        finder.Binding.Select(list => Review(list, today)).OfType<Diagnostic>()
            .Concat(Of(finder, entries));

    /// <summary>What the lists say of these entries alone.</summary>
    public static IEnumerable<Diagnostic> Of(RegulationFinder finder, IEnumerable<Entry> entries) =>
        entries.SelectMany(entry => Named(finder, entry));

    private static Diagnostic? Review(RegulationList list, DateOnly today)
    {
        if (list.Checked is not { } day)
            return Diagnostic.Of(RegulationCodes.NeverChecked, list.Title.Span,
                ("list", list.Title.Value), ("authority", list.Authority));
        return list.Due < today
            ? Diagnostic.Of(RegulationCodes.PastReview, day.Span, ("list", list.Title.Value),
                ("checked", Iso(day.Value)), ("due", Iso(list.Due!.Value)), ("authority", list.Authority))
            : null;
    }

    private static IEnumerable<Diagnostic> Named(RegulationFinder finder, Entry entry) =>
        from outcome in finder.Of(entry).Of(OutcomeKind.Listed)
        let rule = outcome.Rule!
        select Diagnostic.Of(
            rule.Effect == RegulationEffect.Prohibited ? RegulationCodes.Listed : RegulationCodes.Controlled,
            entry.ScientificName.Span,
            ("name", entry.ScientificName.Value.ToString()), ("list", outcome.List.Title.Value),
            ("clause", rule.Clause), ("taxon", rule.Name.Value), ("authority", outcome.List.Authority))
            .With([new RelatedSpan(rule.Name.Span, $"named here, met by {outcome.Name}")]);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
