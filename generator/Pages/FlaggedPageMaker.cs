using CareSheets.Quantities;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>Makes the page of values that relatives do not agree with, accepted ones among them.</summary>
internal sealed class FlaggedPageMaker(Site site)
{
    private readonly KinPictureMaker _pictures = new(site);

    private Words Words => site.Words;

    public FlaggedPage Make()
    {
        const string address = Routes.Flagged;
        var title = Words["flagged.title"];
        var found = site.Relatives.Outliers;
        return new FlaggedPage(
            address, site.Frames.Make(address, title, title, isListed: false), title, Words["flagged.lead"],
            found.Count == 0 ? Words["flagged.none"] : Words.Count("flagged.count", found.Count),
            new Link(Words["record.title"], Routes.Between(address, Routes.HowWell)),
            [.. found.OrderBy(o => o.Accepted is not null).ThenBy(o => !o.IsSure).Select(o => Value(o, address))]);
    }

    private FlaggedValue Value(Outlier outlier, string address)
    {
        var entry = outlier.Entry;
        return new FlaggedValue(
            RangeRowMaker.LabelOf(outlier.Figure.Declaration, Words),
            new Link(entry.ScientificName.Value.ToString(), Routes.Between(address, Routes.Species(entry)), true),
            entry.VernacularName,
            Words.Say(
                outlier.IsMild ? "flagged.said_mild" : "flagged.said", ("value", outlier.Stated.Value.Text),
                ("middle", Show(outlier, outlier.Middle, outlier.Middle)),
                ("expected", Show(outlier, outlier.ExpectedLow, outlier.ExpectedHigh))),
            outlier is { IsSure: false, Accepted: null } ? Words["flagged.chance"] : "",
            outlier.Slip is { } slip ? Slip(outlier, slip) : "",
            outlier.Accepted is { } accepted ? Words.Say("flagged.accepted", ("reason", accepted.Reason)) : "",
            _pictures.Make(outlier));
    }

    private string Slip(Outlier outlier, LikelySlip slip) => Words.Say(
        "flagged.slip", ("slip", Words[$"slip.{slip.Kind}"]), ("other", slip.Other),
        ("meant", Show(outlier, slip.MeantLow, slip.MeantHigh)));

    /// <summary>In the shop's first system and the other, to the nearest figure.</summary>
    private string Show(Outlier outlier, double low, double high)
    {
        var dimension = outlier.Figure.Declaration.Dimension;
        double Possible(double value) => Math.Clamp(value, dimension.Minimum, dimension.Maximum);
        return site.Quantities.Computed(
            dimension, Possible(low), Possible(high), Rounding.Nearest, site.Collection.Store.Units).Both;
    }
}
