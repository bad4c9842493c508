using CareSheets.Arrivals;
using CareSheets.Quantities;

namespace CareSheets.Reading;

/// <summary>Tree of one batch of an arrival to its record.</summary>
internal sealed class BatchBinder(
    IReadOnlyDictionary<string, QuantityDeclaration> figures, QuantityBinder quantities, DateBinder dates)
{
    public Batch? Bind(YamlMapping node)
    {
        var fields = new Fields(node);
        StatedRange? Figure(string name) =>
            quantities.BindClosed(fields.Text(name), figures[name], $"batches.{name}")?.Value;
        var (size, water) = (Figure("size"), Figure("water"));
        var gone = dates.Day(fields.Text("gone"), "batches.gone");
        var losses = Losses(fields);
        if (fields.Text("said") is not { } said)
            return null;
        return new Batch
        {
            Span = said.Span,
            Line = fields.Integer("line")?.Value,
            Said = said,
            Entry = fields.Text("entry"),
            Taken = Taken(fields.Text("taken")?.Value),
            Perhaps = fields.Texts("perhaps"),
            Unclear = [.. fields.Texts("unclear").Select(u => u.Value)],
            Count = fields.Integer("count"),
            Alive = fields.Integer("alive"),
            Size = size,
            Sex = fields.Text("sex")?.Value,
            Strain = fields.Text("strain")?.Value,
            Place = fields.Text("place")?.Value,
            Provenance = Provenance(fields.Text("provenance")?.Value),
            Price = ArrivalBinder.Number(fields.Text("price")),
            Tank = fields.Text("tank")?.Value,
            System = fields.Text("system"),
            Days = fields.Integer("days")?.Value,
            Water = water,
            Losses = losses,
            Cause = fields.Text("cause")?.Value,
            Gone = gone,
            Note = fields.Text("note")?.Value,
        };
    }

    private List<Loss> Losses(Fields fields)
    {
        var losses =
            from item in ArrivalBinder.Mappings(fields, "losses")
            let one = new Fields(item)
            let date = dates.Day(one.Text("date"), "batches.losses.date")
            let count = one.Integer("count")
            where date is not null && count is not null
            select new Loss(date, count);
        return [.. losses.OrderBy(l => l.Date.Value)];
    }

    private static NameTaken? Taken(string? word) => word switch
    {
        "exact" => NameTaken.Exact,
        "former name" => NameTaken.FormerName,
        "spelling" => NameTaken.Spelling,
        "answered" => NameTaken.Answered,
        "by hand" => NameTaken.ByHand,
        _ => null,
    };

    private static Provenance Provenance(string? word) => word switch
    {
        "wild" => Arrivals.Provenance.Wild,
        "bred" => Arrivals.Provenance.Bred,
        "farmed" => Arrivals.Provenance.Farmed,
        _ => Arrivals.Provenance.Unknown,
    };
}
