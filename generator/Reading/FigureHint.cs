using CareSheets.Quantities;

namespace CareSheets.Reading;

/// <summary>What to say to a writer whose figure can't be read, beyond an example.</summary>
internal static class FigureHint
{
    private static readonly HashSet<string> Needed = ["adult.length", "tank.length", "tank.volume"];

    /// <summary>
    /// Words in the place of a figure often mean that nobody knows it. An example alone would invite a made-up one.
    /// </summary>
    public static string ForNoNumber(string written, string path, string example)
    {
        if (written.Any(char.IsAsciiDigit))
            return $"As in {example}.";
        if (Needed.Contains(path))
            return $"As in {example}. Where nobody knows it yet, write draft: true until somebody does.";
        if (path.StartsWith("care.", StringComparison.Ordinal))
            return "Where nobody knows it, leave the line out: relatives are asked then. " +
                $"A figure looks like {example}.";
        return path.StartsWith("adult.", StringComparison.Ordinal) || path.StartsWith("tank.", StringComparison.Ordinal)
            ? $"Where nobody knows it, leave the line out. A figure looks like {example}."
            : $"As in {example}.";
    }

    /// <summary>Why a unit does not say how much.</summary>
    public static string Why(QuantityProblem problem) => ReasonOf(problem) switch
    {
        AmbiguityReason.WhichGallon => "a US gallon holds 3.785 L, an imperial one 4.546 L",
        AmbiguityReason.WhichSubstance => "of which substance it speaks is not said",
        AmbiguityReason.WhichScale => "degrees of which scale is not said",
        AmbiguityReason.PerWhichLength => "it is per centimetre or per metre",
        AmbiguityReason.NeedsDensity =>
            "it may be grams in a litre or in a kilogram, and a specific gravity needs its temperature",
        AmbiguityReason.NeedsFactor => "dissolved solids follow from conductivity by a factor that varies",
        null => "it is not plain which unit is meant",
    };

    /// <summary>How to say it plainly. Where the figure itself changes, another unit behind it would mislead.</summary>
    public static string Way(QuantityProblem problem, string example) => ReasonOf(problem) switch
    {
        AmbiguityReason.NeedsDensity =>
            $"Write the grams of salt that are weighed into a litre, as in {example}; the figure changes too.",
        AmbiguityReason.NeedsFactor => $"Write what the meter shows, as in {example}; the figure changes too.",
        _ => $"Write it with one of: {problem.Values.GetValueOrDefault("choices", "")}.",
    };

    private static AmbiguityReason? ReasonOf(QuantityProblem problem) =>
        Enum.TryParse<AmbiguityReason>(problem.Values.GetValueOrDefault("reason", ""), out var known) ? known : null;
}
