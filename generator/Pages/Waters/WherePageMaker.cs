using System.Globalization;
using CareSheets.Housing;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages.Waters;

/// <summary>Makes the page "Where can it live here?".</summary>
internal sealed class WherePageMaker(Site site)
{
    private const int MostBlends = 2;
    private const string Address = Routes.Where;

    private readonly HousingSentences _sentences = new(site);

    private Words Words => site.Words;

    public WherePage Make()
    {
        var title = Words["housing.title"];
        var found = site.Collection.Entries
            .Select(e => (Entry: e, Fits: SystemFinder.Find(e, site.Collection, site.Relatives.Suggest))).ToList();
        var homeless = found.Where(f => IsHomeless(f.Fits)).ToList();
        return new WherePage(
            Address, site.Frames.Make(Address, title, title, isListed: false), title, Words["housing.lead"],
            Words["housing.homeless"],
            homeless.Count == 0 ? Words["housing.homeless_none"] : Words.Count("housing.homeless", homeless.Count),
            [.. homeless.Select(f => Homeless(f.Entry, f.Fits))],
            Words["housing.table"], Words["housing.table_lead"],
            [.. found.Select(f => Row(f.Entry, f.Fits))],
            [Words["housing.note_unknown"], Words["housing.note_oxygen"], Words["housing.note_blend"]]);
    }

    /// <summary>A tap is no place to live in until it has been warmed, so systems alone count.</summary>
    private static bool IsHomeless(IReadOnlyList<SystemFit> fits) => fits
        .Where(f => f.Source.Kind == WaterSourceKind.System)
        .All(f => f.Suitability == Suitability.FitsNot);

    private HomelessSpecies Homeless(Entry entry, IReadOnlyList<SystemFit> fits)
    {
        var nearest = fits.Where(f => f.Source.Kind == WaterSourceKind.System).MinBy(f => f.Failing.Count());
        return new HomelessSpecies(
            LinkTo(entry), entry.ScientificName.Value.ToString(),
            nearest is null ? "" : Words.Say(
                "housing.nearest", ("system", _sentences.NameOf(nearest.Source)),
                ("reasons", string.Join(Words["housing.and"], _sentences.Reasons(nearest)))),
            [.. Blends(entry, fits)]);
    }

    /// <summary>
    /// Where some system lacks nothing but the right temperature, that is a matter of the heater. Nothing is said to
    /// do for a species of which a figure is unknown.
    /// </summary>
    private IEnumerable<string> Blends(Entry entry, IReadOnlyList<SystemFit> fits) =>
        fits.SelectMany(f => f.Figures).Any(IsUnknown) ? [Words["housing.ask_first"]]
        : fits.FirstOrDefault(IsHeatersMatter) is { } fit
            ? [Words.Say("housing.heater", ("system", _sentences.NameOf(fit.Source)))]
        : BlendFinder.Find(entry, site.Collection).Take(MostBlends).Select(_sentences.Blend);

    private static bool IsUnknown(FigureInWater figure) =>
        figure.Standing is FigureStanding.UnknownOfSpecies or FigureStanding.RelativesApart;

    private static bool IsHeatersMatter(SystemFit fit) => fit.Source.Kind == WaterSourceKind.System &&
        fit.Oxygen is not { IsMet: false } && !fit.Unknown.Any() &&
        fit.Failing.All(f => f.Declaration.Dimension == DimensionCatalogue.Temperature);

    private WhereRow Row(Entry entry, IReadOnlyList<SystemFit> fits) => new(
        entry.Name, LinkTo(entry), entry.ScientificName.Value.ToString(),
        [.. fits.Select(f => new WhereCell(
            _sentences.NameOf(f.Source), ((int)f.Suitability).ToString(CultureInfo.InvariantCulture),
            _sentences.Verdict(f.Suitability),
            [.. _sentences.Reasons(f)]))]);

    private static Link LinkTo(Entry entry) =>
        new(entry.VernacularName, Routes.Between(Address, Routes.Species(entry)));
}
