using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>Makes the page of the engine's own record, computed anew for every site.</summary>
internal sealed class RecordPageMaker(Site site)
{
    private static readonly string[] Claims = ["half", "most", "nearly_all"];

    private Words Words => site.Words;

    public RecordPage Make()
    {
        var lines = OwnRecord.Keep(site.Relatives);
        var title = Words["record.title"];
        string[] notes = lines.Count == 0
            ? [Words["record.none"]]
            : [Words["record.flagged"], Words["record.bands"], Words["record.narrow"], Words["record.score"]];
        return new RecordPage(
            Routes.HowWell, site.Frames.Make(Routes.HowWell, title, Words["record.description"]), title,
            Words["record.lead"], notes,
            [.. lines.GroupBy(l => l.LeftOut).Select(g => Part(g.Key, [.. g]))])
        {
            Guide = lines.Count == 0 ? [] : [Explained("held"), Explained("missed"), Explained("counts")],
        };
    }

    private RecordPart Part(LeftOut left, IReadOnlyList<RecordLine> lines)
    {
        var key = left.ToString().ToLowerInvariant();
        return new RecordPart(
            $"without-{key}", Words[$"record.{key}"], Words[$"record.{key}_lead"],
            [
                Table("held", key, ["count", .. Claims], lines.Select(line =>
                    Row(line, [Number(line.Count), .. line.Coverage.Select(c => Share(c, line.Count))]))),
                Table("missed", key, ["error", "nearest", "overall", "crps"], lines.Select(Missed)),
            ],
            Table("counts", key, Claims, lines.Select(line => Row(line, [.. line.Coverage.Select(Counted)]))));
    }

    private Fact Explained(string table) => new(Words[$"record.{table}"], Words[$"record.{table}_lead"]);

    private RecordTable Table(string table, string part, string[] columns, IEnumerable<RecordRow> rows) => new(
        $"{table}-{part}", Words[$"record.{table}"], Words[$"record.{table}"],
        [.. columns.Select(c => Words[$"record.{c}"]).Prepend(Words["record.figure"])], [.. rows]);

    private RecordRow Row(RecordLine line, IReadOnlyList<string> figures) =>
        new(RangeRowMaker.LabelOf(line.Figure.Declaration, Words), figures);

    /// <summary>How far off, in the unit that the label names.</summary>
    private RecordRow Missed(RecordLine line)
    {
        var unit = DimensionCatalogue.DifferenceOf(line.Figure.Declaration.Dimension)
            .For(site.Collection.Store.Units);
        string Amount(double canonical) => Round(unit.FromCanonical(canonical));
        var row = Row(line,
            [Amount(line.Error), Amount(line.NearestError), Amount(line.OverallError), Amount(line.Crps)]);
        return unit.Symbol.Length == 0
            ? row
            : row with { Label = Words.Say("record.label", ("label", row.Label), ("unit", unit.Symbol)) };
    }

    private string Share(CoverageCount counted, int cases) => Words.Say(
        counted.Agrees ? "record.share" : "record.share_outside",
        ("share", Number((int)Math.Round(100.0 * counted.Covered / cases, MidpointRounding.AwayFromZero))));

    private string Counted(CoverageCount counted) => Words.Say(
        "record.counted", ("covered", Number(counted.Covered)), ("low", Number(counted.Low)),
        ("high", Number(counted.High)));

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Round(double amount) =>
        amount.ToString(amount >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
