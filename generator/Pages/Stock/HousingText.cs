using CareSheets.Arrivals;
using CareSheets.Collection;
using CareSheets.Housing;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>Which of the shop's systems suit a species and why not the others, in lines for the docket.</summary>
internal sealed class HousingText(Site site)
{
    private Words Words => site.Words;

    /// <summary>What stands against the system that was chosen for a batch; nothing where it fits.</summary>
    public string? Against(Batch batch, Entry entry) =>
        Systems(entry).FirstOrDefault(f => f.Source.Water.Name == batch.System?.Value) is
        { Suitability: Suitability.FitsNot } fit
            ? Words.Say("docket.wrong_water", ("system", fit.Source.Water.Name), ("why", Why(fit)))
            : null;

    /// <summary>A line for those that fit, each with what a new batch does to it, and one for the others.</summary>
    public IEnumerable<Fact> All(Delivery delivery, Entry entry)
    {
        var systems = Systems(entry).ToLookup(f => f.Suitability);
        if (systems[Suitability.Fits].Any())
            yield return new Fact(Words["docket.fits"],
                Join(systems[Suitability.Fits].Select(f => Named(delivery, f))));
        if (systems[Suitability.FitsAsFarAsKnown].Any())
            yield return new Fact(Words["docket.fits_as_known"],
                Join(systems[Suitability.FitsAsFarAsKnown].Select(f => Named(delivery, f))));
        if (systems[Suitability.FitsNot].Any())
            yield return new Fact(Words["docket.fits_not"], Join(systems[Suitability.FitsNot].Select(f =>
                Words.Say("docket.system", ("system", f.Source.Water.Name), ("why", Why(f))))));
    }

    private static string Join(IEnumerable<string> systems) => string.Join("; ", systems);

    private IEnumerable<SystemFit> Systems(Entry entry) =>
        SystemFinder.Find(entry, site.Collection, site.Relatives.Suggest)
            .Where(f => f.Source.Kind == WaterSourceKind.System);

    /// <summary>Of a batch that has no system yet: by how much all fish of this one would wait longer.</summary>
    private string Named(Delivery delivery, SystemFit fit)
    {
        var (calendar, name) = (site.Collection.Arrivals.Calendar, fit.Source.Water.Name);
        var joining = delivery.Batch.System is null
            ? calendar.Join(name, delivery.Arrival.Date.Value, calendar.DaysOf(delivery.Batch))
            : null;
        return joining is null
            ? name
            : Words.Say("docket.would_wait", ("system", name),
                ("old", DateText.Of(joining.Old, Words)), ("new", DateText.Of(joining.New, Words)));
    }

    private string Why(SystemFit fit)
    {
        var figures = fit.Failing.Select(f => Words.Say(
            f.Suggested is null ? "docket.figure_apart" : "docket.figure_relatives",
            ("figure", RangeRowMaker.LabelOf(f.Declaration, Words)), ("given", Show(f.Given)),
            ("keep", f.Suggested is { } suggested ? Show(f.Declaration, suggested) : Show(f.Keep))));
        var oxygen = fit.Oxygen is { IsMet: false } ? new[] { Words["docket.too_little_oxygen"] } : [];
        return string.Join(Words["sentence.list_separator"], figures.Concat(oxygen));
    }

    private string Show(CareRangeDeclaration declared, SuggestedRange suggested) => site.Quantities.Computed(
        declared.Dimension, suggested.Low, suggested.High, Rounding.Inward, site.Collection.Store.Units).First;

    private string Show(StatedRange? range) =>
        range is null ? Words["sentence.unknown"] : site.Quantities.Show(range, Rounding.Inward).First;
}
