using System.Globalization;
using CareSheets.PackingLists;
using Xunit.Abstractions;

namespace CareSheets.Tests.PackingLists;

/// <summary>
/// Five lists of invented suppliers with every kind of wrong name that the trade knows, and the right answers
/// beside them, written before the reading of lines and after the matching of names.
/// </summary>
public sealed class FiveListsTests(ITestOutputHelper output)
{
    private static readonly Lazy<List<(ListAnswer Right, MatchedLine? Line)>> All = new(() =>
    [
        .. from file in ListAnswer.Files
           let list = ListAnswer.Read(file)
           from right in ListAnswer.Of(file)
           select (right, list.Lines.FirstOrDefault(l => l.Line.Line == right.Line)),
    ]);

    [Fact]
    public void No_line_is_lost_and_none_is_made_up()
    {
        Assert.InRange(All.Value.Count, 150, 1000);
        Assert.All(All.Value, l => Assert.True(l.Line is not null, $"{l.Right}"));
        foreach (var file in ListAnswer.Files)
            Assert.Equal(
                ListAnswer.Of(file).Select(a => a.Line), ListAnswer.Read(file).Lines.Select(l => l.Line.Line));
    }

    [Fact]
    public void What_is_taken_without_asking_is_right()
    {
        var taken = All.Value.Where(l => l.Line?.Entry is not null).ToList();
        var wrong = taken.Where(l => l.Line!.Entry != l.Right.Entry).ToList();
        var takeable = All.Value.Count(l => l.Right.Entry != "-");
        Say($"{taken.Count} of {All.Value.Count} lines taken, {wrong.Count} wrongly: precision " +
            $"{1 - (double)wrong.Count / taken.Count:F3}, recall {(double)(taken.Count - wrong.Count) / takeable:F3}");
        foreach (var (right, line) in wrong)
            Say($"  wrong: {line!.Line.Said} was taken for {line.Entry} ({right.Entry})");
        Assert.Empty(wrong);
        Assert.True(taken.Count > takeable / 3, $"{taken.Count} of {takeable}");
    }

    [Fact]
    public void Of_the_rest_nineteen_in_twenty_have_the_right_name_among_the_first_three()
    {
        var asked = All.Value.Where(l => l.Line is { Entry: null } && l.Right.Entry != "-").ToList();
        var missed = asked.Where(l =>
            !l.Line!.Perhaps.Take(3).Any(c => c.Species.Key == l.Right.Entry)).ToList();
        var first = asked.Count(l => l.Line!.Perhaps is [var likeliest, ..] && likeliest.Species.Key == l.Right.Entry);
        Say($"{asked.Count} lines asked: {first} have the right name first, " +
            $"{asked.Count - missed.Count} among the first three ({1 - (double)missed.Count / asked.Count:F3})");
        foreach (var (right, line) in missed)
            Say($"  missed: {line!.Line.Said}: {string.Join(", ", line.Perhaps.Select(c => c.Species.Key))}");
        Assert.True(missed.Count <= asked.Count / 20, $"{missed.Count} of {asked.Count}");
    }

    [Fact]
    public void Counts_sizes_sexes_and_provenances_are_as_a_person_reads_them()
    {
        var read = All.Value.Where(l => l.Line is not null).ToList();
        List<string> wrong =
        [
            .. read.Where(l => Text(l.Line!.Line.Count) != l.Right.Count)
                .Select(l => $"count {Text(l.Line!.Line.Count)}: {l.Right}"),
            .. read.Where(l => Text(l.Line!.Line.Size) != l.Right.Size)
                .Select(l => $"size {l.Line!.Line.Size}: {l.Right}"),
            .. read.Where(l => Text(l.Line!.Line.Sex) != l.Right.Sex).Select(l => $"sex {l.Line!.Line.Sex}: {l.Right}"),
            .. read.Where(l => Text(l.Line!.Line.Provenance) != l.Right.Provenance)
                .Select(l => $"provenance {l.Line!.Line.Provenance}: {l.Right}"),
        ];
        Say($"{wrong.Count} of {4 * read.Count} parts read otherwise");
        wrong.ForEach(Say);
        Assert.Empty(wrong);
    }

    private static string Text(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "-";

    private static string Text(string text) => text.Length == 0 ? "-" : text;

    private void Say(string line) => output.WriteLine(line);
}
