using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// A life span is not a third of the shortest in the family, nor three times the longest, where four others of
/// the family state one.
/// </summary>
internal sealed class LifeSpanOfKind(IReadOnlyList<Entry> entries) : ICodedRule
{
    public static readonly CodedText Text = new(
        "life-span-suits-the-family", Severity.Warning,
        "The life span is far from that of the rest of its family", "Look it up again, with its unit.",
        "A third or three times as long among near relatives is most often a slip", "common practice, no source");

    private const int FewestRelatives = 4;
    private const double Times = 3;

    public string Name => Text.Name;

    private readonly ILookup<string, (string Name, double Years)> _byFamily = entries
        .Where(e => e.Adult.LifeSpan?.Value.High is not null)
        .ToLookup(e => e.Family.Value, e => (e.Name, e.Adult.LifeSpan!.Value.High!.Value));

    public IEnumerable<Breach> Check(Entry entry)
    {
        if (entry.Adult.LifeSpan is not { Value: { Low: { } shortest, High: { } longest } } stated)
            yield break;
        var others = _byFamily[entry.Family.Value].Where(e => e.Name != entry.Name).Select(e => e.Years).ToList();
        if (others.Count < FewestRelatives ||
            (longest * Times >= others.Min() && shortest <= others.Max() * Times))
            yield break;
        yield return Text.Breach(entry, stated.Span, "adult.lifeSpan",
            $"{stated.Value.Text}, while {others.Count} other {entry.Family.Value} reach " +
            $"{Years(others.Min())} to {Years(others.Max())} years");
    }

    private static string Years(double years) => years.ToString("0.#", CultureInfo.InvariantCulture);
}
