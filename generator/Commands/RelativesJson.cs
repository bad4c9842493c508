using System.Text.Encodings.Web;
using System.Text.Json;
using CareSheets.Relatives;
using CareSheets.Species;

namespace CareSheets.Commands;

/// <summary>What relatives say of one species, as data; numbers in the canonical unit of the figure.</summary>
internal static class RelativesJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Print(Entry entry, IReadOnlyList<SpeciesAnswer> answers) => JsonSerializer.Serialize(
        new { species = entry.ScientificName.Value.ToString(), figures = answers.Select(Figure) }, Options) + "\n";

    private static object Figure(SpeciesAnswer answer)
    {
        var (declared, estimate) = (answer.Figure.Declaration, answer.Estimate);
        return new
        {
            figure = answer.Figure.Field,
            unit = declared.Dimension.Canonical.Symbol,
            stated = answer.Stated?.Value.Text,
            verdict = Verdict(estimate.Verdict),
            low = estimate.Range?.Low,
            high = estimate.Range?.High,
            sureLow = estimate.Range?.Sure.Low,
            sureHigh = estimate.Range?.Sure.High,
            deviate = answer.Deviate,
            ownFiguresWeighed = estimate.IsHelped,
            rank = estimate.Relations.Rank?.ToString().ToLowerInvariant(),
            asked = estimate.Relations.Asked,
            relatives = estimate.Relations.Nearest.Select(r => new
            {
                species = r.Entry.ScientificName.Value.ToString(),
                stated = r.Stated.Value.Text,
            }),
        };
    }

    private static string Verdict(EstimateVerdict verdict) => verdict switch
    {
        EstimateVerdict.Estimated => "estimated",
        EstimateVerdict.Disagree => "relatives disagree",
        EstimateVerdict.TooFew => "too few",
        EstimateVerdict.AllAlike => "all alike",
    };
}
