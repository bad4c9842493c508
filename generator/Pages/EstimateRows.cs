using System.Globalization;
using CareSheets.Quantities;
using CareSheets.Relatives;

namespace CareSheets.Pages;

/// <summary>Estimates from relatives as rows among the ranges that are stated.</summary>
internal sealed class EstimateRows(Site site)
{
    /// <summary>Relatives named; the others are counted.</summary>
    private const int MostNames = 3;

    private Words Words => site.Words;

    public RangeRow Row(string label, Estimate estimate, IReadOnlyList<KindLine> others) => estimate.Verdict switch
    {
        EstimateVerdict.Estimated => Estimated(label, estimate, others),
        EstimateVerdict.Disagree => Unknown(
            label, others, Words["estimate.disagree"], Sure("estimate.disagree_evidence", estimate)),
        EstimateVerdict.TooFew => Unknown(
            label, others, Words["sentence.unknown"], Words.Count("estimate.too_few", estimate.Relations.Asked)),
        EstimateVerdict.AllAlike => Unknown(
            label, others, Words["sentence.unknown"],
            Words.Say("estimate.all_alike", ("count", Number(estimate.Relations.Asked)))),
    };

    private static RangeRow Unknown(
        string label, IReadOnlyList<KindLine> others, string said, string evidence) =>
        new(label, said, "", null, others, evidence);

    private RangeRow Estimated(string label, Estimate estimate, IReadOnlyList<KindLine> others)
    {
        var (declared, range) = (estimate.Figure.Declaration, estimate.Range!);
        var shown = Show(estimate, range.Low, range.High, Rounding.Inward);
        var said = Words.Say("estimate.bar", ("label", label), ("range", shown.Both));
        return new RangeRow(
            label, shown.First, shown.Second,
            RangeBarMaker.Estimated(declared, range.Low, range.High, said, site.Quantities),
            others, Sure("estimate.sure", estimate))
        {
            IsEstimated = true,
            Brief = estimate.Relations.Rank is null
                ? Words["estimate.brief_collection"]
                : Words.Count("estimate.brief", estimate.Relations.Nearest.Count),
        };
    }

    /// <summary>The stretch of the middle is rounded to the nearest figures: it promises nothing.</summary>
    private string Sure(string sentence, Estimate estimate)
    {
        var sure = estimate.Range!.Sure;
        var shown = Show(estimate, sure.Low, sure.High, Rounding.Nearest);
        return Words.Say(sentence, ("who", Who(estimate)), ("range", shown.Both));
    }

    private Shown Show(Estimate estimate, double low, double high, Rounding rounding) =>
        site.Quantities.Computed(
            estimate.Figure.Declaration.Dimension, low, high, rounding, site.Collection.Store.Units);

    private string Who(Estimate estimate) => estimate.IsHelped
        ? Words.Say("estimate.who_helped", ("who", Who(estimate.Relations)))
        : Who(estimate.Relations);

    private string Who(Relations relations)
    {
        if (relations.Rank is not { } rank)
            return Words.Say("estimate.who_collection", ("count", Number(relations.Asked)));
        var names = string.Join(
            Words["sentence.list_separator"],
            relations.Nearest.Take(MostNames).Select(r => r.Entry.ScientificName.Value.ToString()));
        var word = Words.Or($"rank.{rank}", rank.ToString());
        var more = relations.Nearest.Count - MostNames;
        return more > 0
            ? Words.Say("estimate.who_more", ("names", names), ("count", Number(more)), ("rank", word))
            : Words.Say("estimate.who", ("names", names), ("rank", word));
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
