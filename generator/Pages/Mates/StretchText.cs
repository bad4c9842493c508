using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>
/// Computed figures for readers, in the site's units; for both systems one after the other, the second translated
/// from what the first shows, so that the two agree.
/// </summary>
public sealed class StretchText(Words words, UnitSystem units)
{
    public string Show(Dimension dimension, Stretch? range, Rounding rounding)
    {
        if (range is not { } known)
            return words["sentence.unknown"];
        double? low = double.IsInfinity(known.Low) ? null : known.Low;
        double? high = double.IsInfinity(known.High) ? null : known.High;
        if (units != UnitSystem.Both)
            return QuantityFormat.Computed(dimension, low, high, units, rounding).Text;
        var metric = QuantityFormat.Computed(dimension, low, high, UnitSystem.Metric, rounding).Text;
        (low, high) = QuantityFormat.Tidied(dimension, low, high, UnitSystem.Metric, rounding);
        var us = QuantityFormat.Computed(dimension, low, high, UnitSystem.US, rounding).Text;
        return metric == us ? metric : $"{metric} ({us})";
    }
}
