using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>
/// Draws a value among those of its relatives on the scale on which they are compared, which runs from
/// the least to the greatest of them.
/// </summary>
internal sealed class KinPictureMaker(Site site)
{
    private const int RowHeight = 36;
    private const int TextDown = 14;
    private const int BarDown = 20;

    /// <summary>A single figure is drawn this wide, in percent.</summary>
    private const double Narrowest = 1;

    /// <param name="Low">On the scale of comparison, as is the other end.</param>
    private sealed record Stretch(Entry Entry, StatedRange Range, double Low, double High, bool IsThis);

    public KinPicture Make(Outlier outlier)
    {
        var scale = new ComparisonScale(outlier.Figure.Declaration);
        Stretch Of(Entry entry, StatedRange range) => new(
            entry, range, scale.To(range.Low ?? 0), scale.To(range.High ?? range.Low ?? 0), entry == outlier.Entry);
        var all = RelationFinder.Around(site.Relatives, outlier)
            .Select(r => Of(r.Entry, r.Stated.Value))
            .Append(Of(outlier.Entry, outlier.Stated.Value))
            .OrderBy(s => s.Low + s.High).ThenBy(s => s.Entry.Name, StringComparer.Ordinal).ToList();
        var (least, greatest) = (all.Min(s => s.Low), all.Max(s => s.High));
        var across = greatest > least ? greatest - least : 1;
        return new KinPicture(
            all.Count * RowHeight,
            [.. all.Select((s, row) => Bar(s, row, least, across))],
            Describe(outlier, all));
    }

    private static KinBar Bar(Stretch stretch, int row, double least, double across)
    {
        var width = Math.Max(100 * (stretch.High - stretch.Low) / across, Narrowest);
        var start = Math.Min(100 * (stretch.Low - least) / across, 100 - width);
        return new KinBar(
            stretch.Entry.ScientificName.Value.ToString(), stretch.Range.Text,
            row * RowHeight + TextDown, row * RowHeight + BarDown,
            Percent(start), Percent(width), stretch.IsThis);
    }

    private string Describe(Outlier outlier, List<Stretch> all)
    {
        string Line(Stretch s) => site.Words.Say(
            "sentence.range", ("label", s.Entry.ScientificName.Value.ToString()), ("range", s.Range.Text));
        return site.Words.Say(
            "flagged.picture",
            ("label", RangeRowMaker.LabelOf(outlier.Figure.Declaration, site.Words)),
            ("this", Line(all.Single(s => s.IsThis))),
            ("others", string.Join("; ", all.Where(s => !s.IsThis).Select(Line))));
    }

    private static string Percent(double value) =>
        Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
