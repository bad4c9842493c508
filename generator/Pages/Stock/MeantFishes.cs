using CareSheets.Arrivals;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>
/// What a line of a list may mean while nobody has said which fish it is, or while its entry is a draft: the
/// species that were offered, those of its trade codes, and every word that may be a genus or a family. One too
/// many costs a glance, one too few may cost a finger.
/// </summary>
internal sealed class MeantFishes(SpeciesCollection collection)
{
    /// <summary>Genera have more letters; shorter words are sexes, sizes and marks of lists.</summary>
    private const int ShortestName = 3;

    public IReadOnlyList<MeantFish> Of(Batch batch) =>
    [
        .. Entries(batch).Select(e => new MeantFish(e.ScientificName.Value.ToString(), e.Fields))
            .Concat(Codes(batch).Select(c => Named(c, TradeCode.FamilyOf(c), "Siluriformes")))
            .Concat(Words(batch).Select(Taxon))
            .DistinctBy(m => m.Name),
    ];

    /// <summary>Published entries among them.</summary>
    public IEnumerable<Entry> Entries(Batch batch)
    {
        var codes = Codes(batch);
        return batch.Perhaps.Select(p => collection.Find(p.Value)).OfType<Entry>()
            .Concat(collection.Entries.Where(e => e.TradeCodes.Any(c => codes.Contains(c.Value)))).Distinct();
    }

    private static List<string> Codes(Batch batch)
    {
        var codes = new List<string>();
        TradeCode.TakeFrom(batch.Said.Value, codes);
        return codes;
    }

    /// <summary>Of the line, of a draft and of drafts that were offered: a file is named after its species.</summary>
    private static IEnumerable<string> Words(Batch batch) =>
        string.Join(' ', batch.Perhaps.Select(p => p.Value).Prepend(batch.Said.Value).Append(batch.Entry?.Value ?? ""))
            .Split(' ', ';', ',', '.', '/', '-', '(', ')', '"', '\'', '\t')
            .Where(w => w.Length >= ShortestName && w.All(char.IsAsciiLetter))
            .Select(w => char.ToUpperInvariant(w[0]) + w[1..].ToLowerInvariant()).Distinct();

    private MeantFish Taxon(string word)
    {
        if (GenusTable.Known.Find(word) is { } genus)
            return Named(word, genus.Family, genus.Order);
        return collection.Entries.FirstOrDefault(e => e.Genus == word) is { } entry
            ? Named(word, entry.Family.Value, entry.Order.Value)
            : Named(word, null, null);
    }

    private static MeantFish Named(string name, string? family, string? order)
    {
        (string Field, string? Taxon)[] all = [("scientificName", name), ("family", family), ("order", order)];
        return new MeantFish(name, EntryFields.None.With(all.Where(t => t.Taxon is not null).Select(t =>
            new KeyValuePair<string, FieldValue>(t.Field, new FieldWords(
                [new Sourced<string>(t.Taxon!, SourceSpan.None)], SourceSpan.None)))));
    }
}
