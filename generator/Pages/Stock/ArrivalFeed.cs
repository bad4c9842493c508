using System.Globalization;
using System.Net;
using System.Text;
using System.Xml;
using CareSheets.Arrivals;

namespace CareSheets.Pages.Stock;

/// <summary>
/// New arrivals as an Atom feed (RFC 4287), one entry for each arrival. Identifiers are tag URIs
/// (RFC 4151) of the shop's host and the arrival's day: they stay when addresses change. Times are
/// midnight UTC of the day on which the fish came in, for no clock is read.
/// </summary>
public static class ArrivalFeed
{
    private const string Atom = "http://www.w3.org/2005/Atom";

    public static TextFile Make(Site site)
    {
        using var text = new MemoryStream();
        var settings = new XmlWriterSettings { Indent = true, NewLineChars = "\n", Encoding = new UTF8Encoding(false) };
        using (var writer = XmlWriter.Create(text, settings))
            Write(writer, site);
        return new TextFile(Routes.ArrivalFeed, Encoding.UTF8.GetString(text.ToArray()) + "\n");
    }

    private static void Write(XmlWriter writer, Site site)
    {
        var store = site.Collection.Store;
        var told = new StockPicker(site).Here().ToList();
        var newest = told.Count > 0
            ? told[0].Arrival.Date.Value
            : site.Collection.Entries.Select(e => e.Reviewed).DefaultIfEmpty(new DateOnly(2000, 1, 1)).Max();
        writer.WriteStartElement("feed", Atom);
        writer.WriteAttributeString("xml", "lang", null, site.Words.Language);
        Element(writer, "id", store.Address + Routes.ArrivalFeed);
        Element(writer, "title", site.Words.Say("stock.feed_title", ("store", store.Name)));
        Element(writer, "updated", Time(newest));
        writer.WriteStartElement("author", Atom);
        Element(writer, "name", store.Name);
        writer.WriteEndElement();
        Link(writer, "self", "application/atom+xml", store.Address + Routes.ArrivalFeed);
        Link(writer, "alternate", "text/html", store.Address + Routes.NewArrivals);
        foreach (var (arrival, batches) in told)
            WriteEntry(writer, site, arrival, batches);
        writer.WriteEndElement();
    }

    private static void WriteEntry(XmlWriter writer, Site site, Arrival arrival, IReadOnlyList<Batch> batches)
    {
        var store = site.Collection.Store;
        var day = arrival.Date.Value;
        writer.WriteStartElement("entry", Atom);
        Element(writer, "id", $"tag:{Host(store.Address)},{Day(day)}:arrivals/{arrival.Name}");
        Element(writer, "title", site.Words.Say(
            "stock.feed_entry", ("day", DateText.Of(day, site.Words)),
            ("species", site.Words.Count("fact.species", batches.Select(b => b.Entry!.Value).Distinct().Count()))));
        Element(writer, "updated", Time(day));
        Element(writer, "published", Time(day));
        Link(writer, "alternate", "text/html", $"{store.Address}{Routes.NewArrivals}#{arrival.Name}");
        writer.WriteStartElement("content", Atom);
        writer.WriteAttributeString("type", "html");
        writer.WriteString($"<ul>{string.Concat(batches.Select(b => Item(site, new Delivery(arrival, b))))}</ul>");
        writer.WriteEndElement();
        writer.WriteEndElement();
    }

    /// <summary>Markup within the feed is text to XML, and every value in it is text to HTML.</summary>
    private static string Item(Site site, Delivery delivery)
    {
        var entry = new StockPicker(site).EntryOf(delivery.Batch)!;
        var facts = new BatchFacts(site);
        static string Text(string text) => WebUtility.HtmlEncode(text);
        return $"<li><a href=\"{Text(site.Collection.Store.Address + Routes.Species(entry))}\">" +
            $"{Text(entry.VernacularName)}</a> (<i lang=\"la\">{Text(entry.ScientificName.Value.ToString())}</i>): " +
            $"{Text(facts.Sentence(delivery))}; {Text(facts.Release(delivery))}</li>";
    }

    private static void Element(XmlWriter writer, string name, string text)
    {
        writer.WriteStartElement(name, Atom);
        writer.WriteString(text);
        writer.WriteEndElement();
    }

    private static void Link(XmlWriter writer, string relation, string type, string address)
    {
        writer.WriteStartElement("link", Atom);
        writer.WriteAttributeString("rel", relation);
        writer.WriteAttributeString("type", type);
        writer.WriteAttributeString("href", address);
        writer.WriteEndElement();
    }

    private static string Host(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var whole) ? whole.IdnHost : "unknown.invalid";

    private static string Time(DateOnly day) => Day(day) + "T00:00:00Z";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
