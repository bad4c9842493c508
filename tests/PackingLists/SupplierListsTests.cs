using System.Globalization;
using CareSheets.PackingLists;
using Xunit.Abstractions;

namespace CareSheets.Tests.PackingLists;

/// <summary>
/// Lists of invented suppliers with every kind of wrong name that the trade knows, and the right answers beside
/// them. Five were written before the reading of lines and after the matching of names; quillmarsh.csv, of colours,
/// pairs and doubtful marks, after both and before what it found was mended.
/// </summary>
public sealed class SupplierListsTests(ITestOutputHelper output)
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
    public void Of_the_rest_nineteen_in_twenty_have_the_right_name_among_the_first_three_that_are_shown()
    {
        var asked = All.Value.Where(l => l.Line is { Entry: null } && l.Right.Entry != "-").ToList();
        List<(ListAnswer Right, List<string> Shown, MatchedLine Line)> shown =
            [.. asked.Select(l => (l.Right, l.Line!.Likely.Select(c => c.Species.Key).ToList(), l.Line!))];
        var missed = shown.Where(l => !l.Shown.Take(3).Contains(l.Right.Entry)).ToList();
        var first = shown.Count(l => l.Shown is [var likeliest, ..] && likeliest == l.Right.Entry);
        Say($"{asked.Count} lines asked: {first} have the right name first, " +
            $"{asked.Count - missed.Count} among the first three ({1 - (double)missed.Count / asked.Count:F3})");
        foreach (var (right, names, line) in missed)
            Say($"  missed: {line.Line.Said}: {string.Join(", ", names)}");
        Assert.True(missed.Count <= asked.Count / 20, $"{missed.Count} of {asked.Count}");
    }

    [Fact]
    public void Guesses_that_are_hidden_are_nearly_all_wrong()
    {
        var hidden = All.Value.Where(l => l.Line is { Entry: null })
            .SelectMany(l => l.Line!.Perhaps.Except(l.Line.Likely).Select(c => (l.Right, c.Species.Key, c.Sureness)))
            .ToList();
        var right = hidden.Where(h => h.Key == h.Right.Entry).ToList();
        var shown = All.Value.Where(l => l.Line is { Entry: null }).SelectMany(l => l.Line!.Likely).Count();
        Say($"{hidden.Count} guesses hidden, {right.Count} of them right; {shown} shown");
        Assert.True(hidden.Count > 50 && right.Count <= hidden.Count / 50, $"{right.Count} of {hidden.Count}");
    }

    [Fact]
    public void Counts_sizes_sexes_provenances_and_strains_are_as_a_person_reads_them()
    {
        var read = All.Value.Where(l => l.Line is not null).ToList();
        List<string> wrong = [.. read.SelectMany(l => Wrong(l.Right, l.Line!.Line))];
        Say($"{wrong.Count} of {6 * read.Count} parts read otherwise");
        wrong.ForEach(Say);
        Assert.Empty(wrong);
    }

    private static IEnumerable<string> Wrong(ListAnswer right, PackedLine line)
    {
        (string Part, string Read, string Right)[] parts =
        [
            ("count", Text(line.Count), right.Count), ("size", Text(line.Size), right.Size),
            ("sex", Text(line.Sex), right.Sex), ("provenance", Text(line.Provenance), right.Provenance),
            ("strain", Text(line.Strain), right.Strain),
            ("unclear", line.Unclear.Count > 0 ? "yes" : "no", right.Unclear),
        ];
        return parts.Where(p => p.Right != ListAnswer.Unsaid && p.Read != p.Right)
            .Select(p => $"{p.Part} {p.Read} instead of {p.Right}: {right.List}, line {right.Line}: {line.Said}");
    }

    private static string Text(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "-";

    private static string Text(string text) => text.Length == 0 ? "-" : text;

    private void Say(string line) => output.WriteLine(line);
}
