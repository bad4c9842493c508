using System.Globalization;
using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>Makes the page of what rests on what, which tells the fish room where to look things up next.</summary>
internal sealed class EvidencePageMaker(Site site)
{
    private readonly EvidenceText _text = new(site);

    private Words Words => site.Words;

    public EvidencePage Make()
    {
        const string address = Routes.Evidence;
        var title = Words["lacking.title"];
        return new EvidencePage(
            address, site.Frames.Make(address, title, title, isListed: false), title, Words["lacking.lead"],
            Marks(), [.. Groups(address)]);
    }

    private IReadOnlyList<Fact> Marks()
    {
        var stated = site.Collection.Entries.SelectMany(e => EntryFigures.Of(e, site)).ToList();
        return
        [
            .. Enum.GetValues<EvidenceKind>().Select(kind => new Fact(
                Words[$"evidence.{kind}"], Number(stated.Count(f => f.Evidence?.Kind == kind)))),
            new Fact(Words["lacking.unknown"], Number(stated.Count(f => f.Evidence is null))),
        ];
    }

    private IEnumerable<EvidenceGroup> Groups(string address) =>
        from entry in site.Collection.Entries
        group entry by entry.Evidence.Kind into same
        orderby same.Key descending // from memory, before common practice, before published
        select new EvidenceGroup(
            Words[$"evidence.{same.Key}"], Words.Count("fact.species", same.Count()),
            [.. same.Select(e => Line(e, address))]);

    private EvidenceLine Line(Entry entry, string address)
    {
        var figures = EntryFigures.Of(entry, site);
        string Join(Func<EntryFigure, bool> which, Func<EntryFigure, string> say) =>
            string.Join(Words["sentence.list_separator"], figures.Where(which).Select(say));
        return new EvidenceLine(
            new Link(entry.ScientificName.Value.ToString(), Routes.Between(address, Routes.Species(entry)), true),
            entry.VernacularName,
            Join(f => f.IsOwn, f => $"{f.Label} ({_text.Of(f.Evidence!)})"),
            Join(f => f.Evidence is not null && !f.IsOwn, f => f.Label),
            Join(f => f.Evidence is null, f => f.Label));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
