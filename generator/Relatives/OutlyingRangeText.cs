using System.Globalization;
using CareSheets.Diagnostics;

namespace CareSheets.Relatives;

/// <summary>An outlying range as a diagnostic at its line, with each relative's line beside it.</summary>
public static class OutlyingRangeText
{
    public static Diagnostic Describe(OutlyingRange found) =>
        Diagnostic.Of(RelativesCodes.ApartFromCongeners, found.Stated.Range.Span,
            ("label", found.Declaration.Label),
            ("value", found.Stated.Range.Value.Text),
            ("count", found.Relatives.Count.ToString(CultureInfo.InvariantCulture)),
            ("genus", found.Entry.Genus))
        .At($"care.{found.Declaration.Field}")
        .With(found.Relatives.Select(r => new RelatedSpan(
            r.Stated.Range.Span, $"{r.Entry.ScientificName.Value}: {r.Stated.Range.Value.Text}")));
}
