using CareSheets.Arrivals;
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

    /// <summary>Systems that fit, then those that do not with the reason; a new batch's effect on each.</summary>
    public IEnumerable<Fact> All(Delivery delivery, Entry entry)
    {
        foreach (var fit in Systems(entry).OrderBy(f => f.Suitability))
        {
            var said = fit.Suitability == Suitability.FitsNot
                ? Words.Say("docket.fits_not", ("why", Why(fit)))
                : Words[fit.Suitability == Suitability.Fits ? "docket.fits" : "docket.fits_as_known"];
            yield return new Fact(fit.Source.Water.Name, said, Effect(delivery, fit));
        }
    }

    private IEnumerable<SystemFit> Systems(Entry entry) =>
        SystemFinder.Find(entry, site.Collection).Where(f => f.Source.Kind == WaterSourceKind.System);

    /// <summary>Of a batch that has no system yet: by how much all fish of this one would wait longer.</summary>
    private string Effect(Delivery delivery, SystemFit fit)
    {
        var calendar = site.Collection.Arrivals.Calendar;
        var joining = delivery.Batch.System is null && fit.Suitability != Suitability.FitsNot
            ? calendar.Join(fit.Source.Water.Name, delivery.Arrival.Date.Value, calendar.DaysOf(delivery.Batch))
            : null;
        return joining is null
            ? ""
            : Words.Say("docket.would_wait",
                ("old", DateText.Of(joining.Old, Words)), ("new", DateText.Of(joining.New, Words)));
    }

    private string Why(SystemFit fit)
    {
        var figures = fit.Failing.Select(f => Words.Say("docket.figure_apart",
            ("figure", RangeRowMaker.LabelOf(f.Declaration, Words)), ("given", Show(f.Given)), ("keep", Show(f.Keep))));
        var oxygen = fit.Oxygen is { IsMet: false } ? new[] { Words["docket.too_little_oxygen"] } : [];
        return string.Join("; ", figures.Concat(oxygen));
    }

    private string Show(StatedRange? range) =>
        range is null ? Words["sentence.unknown"] : site.Quantities.Show(range, Rounding.Inward).First;
}
