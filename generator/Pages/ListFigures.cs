using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>The figures of a species as lists show them, short and without what the column's heading says.</summary>
internal sealed class ListFigures(Site site)
{
    private readonly RangeRowMaker _rows = new(site);

    /// <summary>
    /// The column says that lengths are with the tail; one that is not says so itself. TL and SL are the
    /// trade's abbreviations, not the customers'.
    /// </summary>
    public string Length(Entry entry)
    {
        var length = entry.Adult.Length.Value;
        var shown = site.Quantities.Show(length.WithoutBasis(), Rounding.Upward).First;
        return length.Basis is null or LengthBasis.Total
            ? shown
            : site.Words.Say("list.length", ("length", shown), ("basis", site.Words[$"mate_basis.{length.Basis}"]));
    }

    /// <summary>The range to keep it at; what relatives told of bears its mark, estimated or borrowed of one.</summary>
    public string Keep(Entry entry, string field) => _rows.Make(entry, field) switch
    {
        null => site.Words["sentence.unknown"],
        { Brief.Length: > 0 } row => site.Words.Say("list.from_relatives", ("range", row.First)),
        var row => row.First,
    };
}
