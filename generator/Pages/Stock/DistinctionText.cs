using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Telling;

namespace CareSheets.Pages.Stock;

/// <summary>What sets a species apart in a sentence to say, with the figure that it rests on.</summary>
internal sealed class DistinctionText(Site site)
{
    private Words Words => site.Words;

    public Telling Of(Entry entry, Distinction distinction) => distinction switch
    {
        FigureDistinction figure => new Telling(
            Words.Say($"telling.{(figure.IsHigh ? "high" : "low")}_{figure.Topic}", ("others", Beaten(entry, figure))),
            Words.Say("telling.figure", ("own", Show(figure, figure.Value, entry)),
                ("next", figure.NextEntry.VernacularName), ("figure", Show(figure, figure.Next, figure.NextEntry)))),
        WordDistinction word => new Telling(
            Words.Say($"telling.word_{word.Topic}", ("word", Word(word, word.Word)), ("others", Sharing(entry, word))),
            Words.Say("telling.sheet", ("words",
                string.Join(Words["sentence.list_separator"], word.All.Select(w => Word(word, w)))))),
        _ => throw new InvalidOperationException($"No words for a {distinction.GetType().Name}."),
    };

    /// <summary>"all 7 others of the genus Danio here", or how many of them.</summary>
    private string Beaten(Entry entry, FigureDistinction figure) => figure.Beyond == figure.Others
        ? Words.Say("telling.all", ("count", DocketMaker.Number(figure.Others)), ("circle", Circle(entry, figure)))
        : Words.Say("telling.most", ("beyond", DocketMaker.Number(figure.Beyond)),
            ("count", DocketMaker.Number(figure.Others)), ("circle", Circle(entry, figure)));

    private string Sharing(Entry entry, WordDistinction word)
    {
        (string, string) circle = ("circle", Circle(entry, word));
        var others = ("others", DocketMaker.Number(word.Others));
        return (word.Others - word.Beyond) switch
        {
            0 => Words.Say("telling.none", others, circle),
            1 => Words.Say("telling.one", others, circle),
            var sharing => Words.Say("telling.few", ("count", DocketMaker.Number(sharing)), others, circle),
        };
    }

    private string Circle(Entry entry, Distinction distinction) => distinction.Circle switch
    {
        CareSheets.Telling.Circle.Genus => Words.Say("telling.in_genus", ("genus", entry.Genus)),
        CareSheets.Telling.Circle.Family => Words.Say("telling.in_family", ("family", entry.Family.Value)),
        CareSheets.Telling.Circle.Arrival => Words["telling.in_arrival"],
    };

    private string Word(WordDistinction distinction, string word) => distinction.Topic == "countryCode"
        ? CountryName.Of(word, Words)
        : Words[$"{distinction.Topic}.{word}"];

    private string Show(FigureDistinction figure, TraitValue value, Entry of) => value.Stated is { } stated
        ? site.Quantities.Show(stated, figure.Topic is "length" or "tank" ? Rounding.Upward : Rounding.Inward).First
        : new EntryFacts(site).Group(of).Value;
}
