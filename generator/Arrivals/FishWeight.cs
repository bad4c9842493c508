using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Arrivals;

/// <summary>
/// What a fish weighs, from its length and shape: W = a·L^b, grams from centimetres of total length.
/// Shapes have the means of a and b that Froese, Thorson and Reyes 2014 (Journal of Applied
/// Ichthyology 30:78-85) give for body shapes; the figures here are from memory. Single species lie
/// within half and double of it, which is enough to tell a crowded bag from a roomy one.
/// </summary>
public static class FishWeight
{
    // Between 1.14 and 1.25 in five measured species (morphometric table of a US federal help page, seen in part).
    private const double TotalToStandard = 1.2;

    /// <summary>Grams of one fish at the upper end of its size as sold.</summary>
    public static double? Of(StatedRange? size, Entry? entry)
    {
        if (size?.High is not { } length || size.Basis is LengthBasis.DiscWidth)
            return null;
        var (a, b) = Factors(entry?.Adult.Shape.Value);
        return a * Math.Pow(length * (size.Basis == LengthBasis.Standard ? TotalToStandard : 1), b);
    }

    /// <summary>A fish whose shape nobody has told counts as spindle-shaped.</summary>
    private static (double A, double B) Factors(string? shape) => shape switch
    {
        "eel-like" => (0.00102, 3.06),
        "elongated" => (0.00389, 3.12),
        "deep" or "disc" => (0.0193, 3.01),
        _ => (0.0112, 3.04),
    };
}
