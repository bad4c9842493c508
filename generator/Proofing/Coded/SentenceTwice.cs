using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// No sentence of prose or caution stands word for word in two entries: what was copied was seldom
/// thought about.
/// </summary>
internal sealed class SentenceTwice(SentenceIndex sentences) : ICodedRule
{
    public static readonly CodedText Text = new(
        "sentence-is-told-once", Severity.Warning,
        "Another entry has the very same sentence", "Say what is true of this species, in words of its own.",
        "Sentences copied from entry to entry go on saying what is true of the first one",
        "common practice, no source");

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        foreach (var (key, span) in sentences.Of(entry))
        {
            if (sentences.Elsewhere(key, entry) is { } other)
                yield return Text.Breach(entry, span, "", $"“{Excerpt.Of(key)}”",
                    new RelatedSpan(other.Span, $"the same in {other.Entry}"));
        }
    }
}
