using CareSheets.Diagnostics;
using CareSheets.Regulations;
using CareSheets.Species;

namespace CareSheets.Proofing.Advice;

/// <summary>
/// What the home sheets lack of the advice that the shop's law asks for: told for each entry, and
/// once for all where the shop itself is silent.
/// </summary>
public static class AdviceCheck
{
    /// <param name="storeFile">Where the shop's own part would be written.</param>
    public static IEnumerable<Diagnostic> Check(
        Store store, IReadOnlyList<Entry> entries, IEnumerable<AdviceDuty> duties, string storeFile)
    {
        foreach (var duty in duties.Where(d => Jurisdiction.Binds(d.Applies, store.Jurisdiction)))
        {
            var lacking = entries.Select(e => (Entry: e, Topics: Lacking(duty, e, store))).ToList();
            var silent = lacking.SelectMany(l => l.Topics).Distinct()
                .Where(AdviceCoverage.IsOfTheStore).Order().ToList();
            if (silent.Count > 0)
                yield return Describe(RegulationCodes.StoreLacks, SourceSpan.WholeFile(storeFile), duty, silent);
            foreach (var (entry, topics) in lacking)
            {
                var own = topics.Where(t => !AdviceCoverage.IsOfTheStore(t)).ToList();
                if (own.Count > 0)
                    yield return Describe(RegulationCodes.AdviceLacks, entry.Span, duty, own);
            }
        }
    }

    private static List<AdviceTopic> Lacking(AdviceDuty duty, Entry entry, Store store) =>
        [.. duty.Topics.Where(topic => !AdviceCoverage.Covers(topic, entry, store))];

    private static Diagnostic Describe(
        DiagnosticCode code, SourceSpan span, AdviceDuty duty, IReadOnlyList<AdviceTopic> topics) =>
        Diagnostic.Of(code, span,
            ("duty", $"{duty.Title.Value}, {duty.Clause}"),
            ("topics", string.Join(", ", topics.Select(AdviceFields.Name))),
            ("remedy", $"Fill in {string.Join(", ", topics.Select(AdviceFields.Of).Distinct())}."))
            .With([new RelatedSpan(duty.Title.Span, "the duty is here")]);
}
