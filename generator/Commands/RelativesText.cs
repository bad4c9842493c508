using System.Globalization;
using System.Text;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>What relatives say of one species, as a person reads it on a terminal.</summary>
internal static class RelativesText
{
    private const int MostRelatives = 8;

    public static string Print(Entry entry, IReadOnlyList<SpeciesAnswer> answers)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{entry.ScientificName.Value}, {entry.VernacularName}\n");
        foreach (var answer in answers)
            text.Append(Print(answer));
        return text.ToString();
    }

    private static string Print(SpeciesAnswer answer)
    {
        var estimate = answer.Estimate;
        var text = new StringBuilder();
        var stated = answer.Stated is { } own ? own.Value.Text : "not stated";
        text.Append(CultureInfo.InvariantCulture, $"\n{answer.Figure.Declaration.Label}: {stated}\n");
        text.Append(CultureInfo.InvariantCulture, $"  relatives say: {Said(estimate)}\n");
        text.Append(CultureInfo.InvariantCulture, $"  {DraftText.Comment(estimate)}\n");
        if (estimate.IsHelped)
            text.Append("  its own other figures, mouth, group and habitat were weighed too\n");
        if (answer.Deviate is { } deviate)
            text.Append(CultureInfo.InvariantCulture, $"  its own middle lies {Apart(deviate)}\n");
        foreach (var relation in estimate.Relations.Nearest.Take(MostRelatives))
            text.Append(CultureInfo.InvariantCulture,
                $"    {relation.Entry.ScientificName.Value,-32} {relation.Stated.Value.Text}\n");
        if (estimate.Relations.Nearest.Count > MostRelatives)
            text.Append(CultureInfo.InvariantCulture,
                $"    and {estimate.Relations.Nearest.Count - MostRelatives} more\n");
        return text.ToString();
    }

    private static string Said(Estimate estimate) => estimate.Verdict switch
    {
        EstimateVerdict.Estimated => DraftText.Range(
            estimate.Figure.Declaration.Dimension, estimate.Range!.Low, estimate.Range.High),
        EstimateVerdict.Disagree => "they disagree",
        EstimateVerdict.TooFew or EstimateVerdict.AllAlike => "nothing that helps",
    };

    private static string Apart(double deviate) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Math.Abs(deviate):0.0} standard deviations {(deviate < 0 ? "below" : "above")} what that foretells");
}
