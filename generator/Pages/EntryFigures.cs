using CareSheets.Species;

namespace CareSheets.Pages;

/// <summary>One figure or group of figures of an entry with what it rests on.</summary>
/// <param name="Evidence">Nothing where nobody stated the figure.</param>
/// <param name="IsOwn">It says where it comes from itself, instead of leaving that to the entry.</param>
internal sealed record EntryFigure(string Label, Evidence? Evidence, bool IsOwn);

/// <summary>Every figure of an entry that readers rely on, with its evidence.</summary>
internal static class EntryFigures
{
    public static IReadOnlyList<EntryFigure> Of(Entry entry, Site site) =>
    [
        Part("fact.adult_length", entry.Adult.Evidence, entry, site),
        .. site.Collection.Ranges.SelectMany(declared => Ranges(declared, entry, site)),
        Part("fact.tank", entry.Tank.Evidence, entry, site),
        Part("fact.group", entry.Company.Evidence, entry, site),
    ];

    private static EntryFigure Part(string word, Evidence? own, Entry entry, Site site) =>
        new(site.Words[word], own ?? entry.Evidence, own is not null);

    private static IEnumerable<EntryFigure> Ranges(CareRangeDeclaration declared, Entry entry, Site site)
    {
        var label = RangeRowMaker.LabelOf(declared, site.Words);
        if (entry.Range(declared.Field) is { } range)
            return range.Kinds.Select(kind => new EntryFigure(
                kind.Kind == RangeKind.Keep ? label : Said(label, kind.Kind, site),
                kind.Evidence, kind.Evidence != entry.Evidence));
        return declared.IsAlwaysShown ? [new EntryFigure(label, null, false)] : [];
    }

    private static string Said(string label, RangeKind kind, Site site) =>
        site.Words.Say("sentence.figure", ("label", label), ("kind", site.Words[$"kind.{kind}"]));
}
