using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Quantities;

namespace CareSheets.Pages.Stock;

/// <summary>What customers are told of a batch, piece by piece, as page, feed and species page share it.</summary>
internal sealed class BatchFacts(Site site)
{
    private Words Words => site.Words;

    /// <summary>The species, or the supplier's own words while nobody knows it.</summary>
    public string Name(Batch batch) =>
        batch.Entry is { } name && site.Collection.Find(name.Value) is { } entry
            ? entry.VernacularName
            : Words.Say("docket.quoted", ("said", batch.Said.Value));

    /// <summary>How many there are by the last count; empty before the bags are opened.</summary>
    public string Count(Batch batch) => batch.Left is { } left ? Words.Count("stock.count", left) : "";

    /// <summary>Strain, size and sex, but nothing that the list leaves open.</summary>
    public string Kind(Batch batch) => Join(Strain(batch), Size(batch), Sex(batch));

    /// <summary>Strain and sex, which a price is for, and how many.</summary>
    public string Counted(Batch batch) => Join(Strain(batch), Sex(batch), Count(batch));

    /// <summary>Caught or bred, and where: a question that customers ask first of all.</summary>
    public string Source(Batch batch) => batch.Place is { } place && !batch.IsOpen(place)
        ? Words.Say("stock.source", ("how", Words[$"provenance.{batch.Provenance}"]), ("place", place))
        : Words[$"provenance.{batch.Provenance}"];

    public string Price(Batch batch) => batch.Price is { } price
        ? Words.Say("stock.price", ("price", Money(price, site.Collection.Store.Currency)))
        : "";

    /// <summary>The day from which it is sold: a date, never "in three days", so that a page keeps true.</summary>
    public string Release(Delivery delivery) => Words.Say("stock.release", ("day", DateText.Of(
        site.Collection.Arrivals.Calendar.ReleaseOf(delivery.Arrival, delivery.Batch).Day, Words)));

    public string Sentence(Delivery delivery) => Join(
        Count(delivery.Batch), Kind(delivery.Batch), Source(delivery.Batch), Price(delivery.Batch));

    private static string Strain(Batch batch) =>
        batch.Strain is { } strain && !batch.IsOpen(strain) ? $"“{strain}”" : "";

    /// <summary>Customers are told what a length includes, not its abbreviation.</summary>
    private string Size(Batch batch) => batch.Size is { Low: { } low, High: { } high } size
        ? Words.Say("stock.size",
            ("size", site.Quantities.Computed(
                size.Dimension, low, high, Rounding.Nearest, site.Collection.Store.Units).Both),
            ("basis", Words[$"mate_basis.{size.Basis}"]))
        : "";

    /// <summary>Of pairs it is the number that is open, and not that they are pairs.</summary>
    private string Sex(Batch batch) =>
        batch.Sex is { } sex && (sex is "pairs" or "trios" || !batch.IsOpen(sex)) ? Words[$"stock_sex.{sex}"] : "";

    private string Join(params string[] pieces) =>
        string.Join(Words["sentence.list_separator"], pieces.Where(p => p.Length > 0));

    /// <summary>Signs that customers read without thought; of other currencies the code of ISO 4217.</summary>
    private static string Money(decimal price, string? currency)
    {
        var figure = price.ToString("0.00", CultureInfo.InvariantCulture);
        return currency switch
        {
            "GBP" => $"£{figure}",
            "EUR" => $"€{figure}",
            "USD" => $"${figure}",
            null => figure,
            _ => $"{figure} {currency}",
        };
    }
}
