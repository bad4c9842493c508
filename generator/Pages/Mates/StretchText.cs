using CareSheets.Quantities;
using CareSheets.Tankmates;

namespace CareSheets.Pages.Mates;

/// <summary>Computed figures for readers, in the site's units; for both systems one after the other.</summary>
public sealed class StretchText(Words words, UnitSystem units)
{
    public string Show(Dimension dimension, Stretch? range, Rounding rounding)
    {
        if (range is not { } known)
            return words["sentence.unknown"];
        if (units != UnitSystem.Both)
            return In(dimension, known, units, rounding);
        var metric = In(dimension, known, UnitSystem.Metric, rounding);
        var us = In(dimension, known, UnitSystem.US, rounding);
        return metric == us ? metric : $"{metric} ({us})";
    }

    private static string In(Dimension dimension, Stretch range, UnitSystem system, Rounding rounding) =>
        QuantityFormat.Computed(
            dimension,
            double.IsInfinity(range.Low) ? null : range.Low,
            double.IsInfinity(range.High) ? null : range.High,
            system, rounding).Text;
}
