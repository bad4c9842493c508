using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Proofing.Prose;
using CareSheets.Species;

namespace CareSheets.Tests.Proofing.Prose;

/// <summary>How well the reader of prose does on labelled sentences.</summary>
internal sealed class LabelledScore
{
    public int Sentences { get; private set; }

    public int Labelled { get; private set; }

    public int Found { get; private set; }

    /// <summary>Found at the labelled words, of the labelled kind, with the labelled numbers.</summary>
    public int Right { get; private set; }

    public int LabelledAlarms { get; private set; }

    public int Alarms { get; private set; }

    public int RightAlarms { get; private set; }

    public List<string> Wrong { get; } = [];

    public double Precision => (double)Right / Found;

    public double Recall => (double)Right / Labelled;

    public double AlarmPrecision => (double)RightAlarms / Alarms;

    public double AlarmRecall => (double)RightAlarms / LabelledAlarms;

    public static LabelledScore Of(IEnumerable<LabelledSentence> sentences, Entry fish, SpeciesCollection collection)
    {
        var score = new LabelledScore();
        var mentions = new SpeciesMentions(new SpeciesNames(collection), fish);
        foreach (var sentence in sentences)
            score.Add(sentence, fish with { Prose = new("\n" + sentence.Text, fish.Prose.Start) }, mentions);
        return score;
    }

    private void Add(LabelledSentence sentence, Entry fish, SpeciesMentions mentions)
    {
        Sentences++;
        Labelled += sentence.Quantities.Count;
        LabelledAlarms += sentence.Quantities.Count(q => q.Disagrees);
        var left = sentence.Quantities.ToList();
        foreach (var found in ProseReader.Read(ProseText.OfProse(fish), mentions).Where(q => q.Range == RangeKind.Keep))
        {
            Found++;
            var alarm = EntryFigure.Of(fish, found) is { } figure && !Agreement.IsAgreed(found, figure);
            Alarms += alarm ? 1 : 0;
            var label = left.Find(l => Matches(l, found));
            if (label is null)
            {
                Wrong.Add($"not labelled: {found.Kind} {found.Low}..{found.High} {found.Bound}: {sentence.Text}");
                continue;
            }
            left.Remove(label);
            Right++;
            RightAlarms += alarm && label.Disagrees ? 1 : 0;
            if (alarm != label.Disagrees)
                Wrong.Add($"alarm {alarm}: {found.Kind} {found.Low}..{found.High} {found.Bound}: {sentence.Text}");
        }
        Wrong.AddRange(left.Select(l => $"missed: {l.Kind} {string.Join("..", l.Ends)}: {sentence.Text}"));
    }

    private static bool Matches(LabelledQuantity label, ProseQuantity found)
    {
        var start = found.Start - 1; // the text begins on the line below its fence
        return label.Kind == found.Kind && start < label.Start + label.Length && label.Start < start + found.Length &&
            label.Ends.All(end => IsNear(end, found.Low) || IsNear(end, found.High));
    }

    private static bool IsNear(double one, double other) => Math.Abs(one - other) <= 0.01 * Math.Max(1, Math.Abs(one));
}
