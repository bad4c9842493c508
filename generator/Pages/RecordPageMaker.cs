using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>Makes the page of the engine's own record, computed anew for every site.</summary>
internal sealed class RecordPageMaker(Site site)
{
    private static readonly string[] Columns =
        ["count", "half", "most", "nearly_all", "error", "nearest", "overall", "crps"];

    private Words Words => site.Words;

    public RecordPage Make()
    {
        var lines = OwnRecord.Keep(site.Relatives);
        var title = Words["record.title"];
        string[] notes = lines.Count == 0
            ? [Words["record.none"]]
            : [Words["record.flagged"], Words["record.bands"], Words["record.narrow"], Words["record.units"]];
        return new RecordPage(
            Routes.HowWell, site.Frames.Make(Routes.HowWell, title, Words["record.description"]), title,
            Words["record.lead"], notes,
            [.. lines.GroupBy(l => l.LeftOut).Select(g => Table(g.Key, g))]);
    }

    private RecordTable Table(LeftOut left, IEnumerable<RecordLine> lines)
    {
        var key = left.ToString().ToLowerInvariant();
        return new RecordTable(
            $"without-{key}", Words[$"record.{key}"], Words[$"record.{key}_lead"],
            [.. Columns.Select(c => Words[$"record.{c}"]).Prepend(Words["record.figure"])],
            [.. lines.Select(Row)]);
    }

    private RecordRow Row(RecordLine line)
    {
        var declared = line.Figure.Declaration;
        var unit = DimensionCatalogue.DifferenceOf(declared.Dimension).For(site.Collection.Store.Units);
        string Amount(double canonical) => Round(unit.FromCanonical(canonical));
        var label = RangeRowMaker.LabelOf(declared, Words);
        return new RecordRow(
            unit.Symbol.Length == 0 ? label : Words.Say("record.label", ("label", label), ("unit", unit.Symbol)),
            [
                Number(line.Count), .. line.Coverage.Select(c => Covered(c, line.Count)),
                Amount(line.Error), Amount(line.NearestError), Amount(line.OverallError), Amount(line.Crps),
            ]);
    }

    private string Covered(CoverageCount counted, int cases) => Words.Say(
        counted.Agrees ? "record.covered" : "record.covered_outside",
        ("share", Number((int)Math.Round(100.0 * counted.Covered / cases, MidpointRounding.AwayFromZero))),
        ("covered", Number(counted.Covered)), ("low", Number(counted.Low)), ("high", Number(counted.High)));

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Round(double amount) =>
        amount.ToString(amount >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
