using System.Globalization;
using CareSheets.Commands;
using CareSheets.Tests.Support;
using Xunit.Abstractions;

namespace CareSheets.Tests.Proofing.Prose;

/// <summary>
/// Precision and recall on sentences written and labelled before the reader of prose was. What it
/// must reach on those that it was tuned by is higher than on those that were kept apart.
/// </summary>
public sealed class LabelledSentenceTests(ITestOutputHelper output)
{
    private const string Fish = """
        adult: { length: 5 cm TL, shape: fusiform, mouth: small, lifeSpan: 3–5 years }
        care:
          temperature: { keep: 22–26 °C, prefers: 23–25 °C }
          ph: 6.0–7.0
          hardness: 2–10 °dH
          carbonateHardness: 1–6 °dKH
          salinity: 0–2 g/L
        tank: { length: 80 cm, volume: 100 L, substrate: any, lid: yes }
        """;

    [Fact]
    public void Quantities_of_the_tuning_sentences_are_found() => AssertScore("tuning.txt", 0.98, 0.9, show: true);

    [Fact]
    public void Quantities_of_sentences_that_were_kept_apart_are_found() =>
        AssertScore("held-out.txt", 0.94, 0.9, show: false);

    [Fact]
    public void There_are_enough_sentences_and_a_third_is_kept_apart()
    {
        var (tuning, apart) = (LabelledSentence.Read("tuning.txt").Count, LabelledSentence.Read("held-out.txt").Count);
        Assert.True(tuning + apart >= 150, $"{tuning + apart} sentences");
        Assert.InRange(apart, 0.3 * (tuning + apart), 0.4 * (tuning + apart));
    }

    private void AssertScore(string file, double precision, double recall, bool show)
    {
        using var workshop = new Workshop();
        var path = workshop["content/species/danio-rerio.md"];
        var lines = File.ReadAllText(path);
        var from = lines.IndexOf("adult:", StringComparison.Ordinal);
        var to = lines.IndexOf("company:", StringComparison.Ordinal);
        File.WriteAllText(path, lines[..from] + Fish + "\n" + lines[to..]);
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        var collection = bench.ReadCollection()!;
        Assert.False(bench.Bag.HasErrors, ToySite.Told(bench.Bag));
        var score = LabelledScore.Of(LabelledSentence.Read(file), collection.Find("danio-rerio")!, collection);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
            {file}: {score.Sentences} sentences, {score.Labelled} quantities.
            Found {score.Found}, right {score.Right}: precision {score.Precision:F3}, recall {score.Recall:F3}.
            Alarms {score.Alarms} of {score.LabelledAlarms}, right {score.RightAlarms}:
            precision {score.AlarmPrecision:F3}, recall {score.AlarmRecall:F3}.
            """));
        var wrong = show ? string.Join('\n', score.Wrong) : "";
        output.WriteLine(wrong);
        Assert.True(score.Precision >= precision && score.Recall >= recall, $"See the output. {wrong}");
        Assert.True(score.AlarmPrecision >= precision && score.AlarmRecall >= recall, $"See the output. {wrong}");
    }
}
