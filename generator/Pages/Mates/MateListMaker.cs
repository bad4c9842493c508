using CareSheets.Quantities;
using CareSheets.Species;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Pages.Mates;

/// <summary>Makes the lists of companions for the page of a species.</summary>
internal sealed class MateListMaker(Site site, Acquaintances mates)
{
    /// <summary>As many as a customer reads; the others are a click away.</summary>
    private const int WithWhy = 8;

    private readonly MateSentences _sentences = new(site);
    private readonly StretchText _figures = new(site.Words, site.Units);
    private readonly MateRank _rank = new(mates);

    /// <summary>To every species; the way there is the same from the page of any other.</summary>
    private readonly Lazy<Link[]> _links = new(() => Links(site, mates));

    public MateLists Make(Entry entry)
    {
        var (here, address) = (mates.PlaceOf(entry.Name), Routes.Species(entry));
        var byVerdict = Enumerable.Range(0, mates.Mates.Count).Where(o => o != here)
            .ToLookup(o => mates.Judge(here, o));
        var suits = _rank.BestFirst(here, byVerdict[Verdict.Suits]);
        var care = FewestReasons(here, byVerdict[Verdict.WithCare]);
        return new MateLists(
            List(Verdict.Suits, "suits", suits, o => WhySuits(here, o)),
            List(Verdict.WithCare, "care", care, o => WhyCare(here, o)),
            Names(Verdict.KeepApart, [.. byVerdict[Verdict.KeepApart]]),
            $"{Routes.Between(address, Routes.Together)}#species={entry.Name}",
            site.Words.Say("mates.rest", ("species", entry.VernacularName)));
    }

    private MateList List(
        Verdict verdict, string key, IReadOnlyList<int> others, Func<int, IReadOnlyList<string>> why) => new(
        $"{(int)verdict}",
        site.Words.Count($"mates.{key}", others.Count),
        [.. others.Take(WithWhy).Select(o => new MateLine(_links.Value[o], [.. why(o).Select(w => new LatinText(w))]))],
        [.. others.Skip(WithWhy).Select(o => _links.Value[o])],
        site.Words.Count("mates.more", Math.Max(0, others.Count - WithWhy)));

    /// <summary>All by name alone, for whoever has no script to ask why.</summary>
    private MateList Names(Verdict verdict, IReadOnlyList<int> others) => new(
        $"{(int)verdict}", site.Words.Count("mates.apart", others.Count), [], [.. others.Select(o => _links.Value[o])],
        site.Words["mates.names"]);

    private IReadOnlyList<int> FewestReasons(int here, IEnumerable<int> others) =>
        [.. others.OrderBy(o => mates.CountReasons(here, o)).ThenBy(o => o)];

    private static Link[] Links(Site site, Acquaintances mates)
    {
        var sentences = new MateSentences(site);
        return
        [
            .. mates.Mates.Select(m => new Link(
                sentences.NameOf(m), Routes.Between(Routes.Species(m.Name), Routes.Species(m.Name)))),
        ];
    }

    private IReadOnlyList<string> WhyCare(int here, int other) =>
        [.. mates.Pair(here, other).Reasons.Select(r => _sentences.Of(r, Verdict.WithCare))];

    private IReadOnlyList<string> WhySuits(int here, int other)
    {
        var (one, two) = (mates.Mates[here], mates.Mates[other]);
        var water = string.Join(site.Words["sentence.list_separator"],
            mates.Ranges.Where(r => r.IsAlwaysShown).Select(r => InCommon(r, one, two)));
        var both = site.Words.Say("mates.both_at", ("water", water));
        return MateRank.ShareLevel(one, two) ? [both] : [both, site.Words["mates.other_level"]];
    }

    private string InCommon(CareRangeDeclaration range, Tankmate one, Tankmate two) => site.Words.Say("mates.figure",
        ("label", RangeRowMaker.LabelOf(range, site.Words)),
        ("figure", _figures.Show(range.Dimension, SharedWater.Of(range, [one, two]).Shared, Rounding.Inward)));
}
