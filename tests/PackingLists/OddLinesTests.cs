using CareSheets.Diagnostics;
using CareSheets.PackingLists;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>Counts, sexes, sizes and origins that nobody can read for sure: no line of fish is lost for them.</summary>
public sealed class OddLinesTests
{
    private const string Heading = "Item;Qty;Sex;Origin;Size";

    private const string Others = "Danio rerio;10;;;\nDanio rerio;10;;;\nDanio rerio;10;;;\n";

    [Theory]
    [InlineData("Apistogramma panduro;6 pr;;;", null, "pairs", "6 pr: 6 pairs, or 6 fish")]
    [InlineData("Colisa lalia cobalt;20m;;;", null, "", "20m: in the column of the count")]
    [InlineData("Nobody's fish;20m;;;", null, "", "20m: in the column of the count")]
    [InlineData("Nobody's fish;10 males;;;", 10, "male", null)]
    [InlineData("Nobody's fish;x30;;;", 30, "", null)]
    [InlineData("Nobody's fish;4 x 25;;;", 100, "", null)]
    [InlineData("Danio rerio;10;pr;;", 10, "pairs", "10: 10 pairs, or 10 fish")]
    [InlineData("Danio rerio trio;5;;;", 5, "trios", "5: 5 trios, or 5 fish")]
    [InlineData("Danio rerio;1 trio;;;", 3, "trios", null)]
    [InlineData("Danio rerio pair;1;;;", 1, "pairs", "1: one of the pairs, or 1 fish")]
    [InlineData("Danio rerio;9;1,2;;", 9, "trios", "9: 9 trios, or 9 fish")]
    [InlineData("Danio rerio;9;2,3;;", 9, "", "2,3: in the column of the sex")]
    [InlineData("Danio rerio;9;;F;", 9, "", "F: in the column of the origin")]
    [InlineData("Danio rerio;9;;Tefe;", 9, "", null)]
    [InlineData("Danio kyathit;;;;4 cm", null, "", null)]
    [InlineData("Nobody's fish;;;;4 cm", null, "", null)]
    public void A_line_of_fish_stays_with_its_question(string line, int? count, string sex, string? question)
    {
        var read = List($"{Heading}\n{Others}{line}\n").Lines;
        Assert.Equal(4, read.Count);
        var last = read[3].Line;
        Assert.Equal((count, sex, question), (last.Count, last.Sex, last.Unclear.SingleOrDefault()));
    }

    [Theory]
    [InlineData("CATFISH;;;;", SkipReason.Heading)]
    [InlineData("All fish are longer than 4 cm;;;;", SkipReason.Remark)]
    [InlineData("Item;Qty;Sex;Origin;Size", SkipReason.Heading)]
    public void Headings_and_remarks_are_still_no_fish(string line, SkipReason reason) =>
        Assert.Equal(reason, Assert.Single(List($"{Heading}\n{Others}{line}\n").Skipped).Reason);

    [Theory]
    [InlineData("Danio rerio 3/4in", "0.75 in")]
    [InlineData("Danio rerio 1 1/4\"", "1.25 in")]
    [InlineData("Danio rerio 1/2-3/4in", "0.5–0.75 in")]
    [InlineData("Danio rerio 3/4-1 inch", "0.75–1 in")]
    [InlineData("Danio rerio 3/4 cm", "3–4 cm")] // a range, for nobody has quarters of a centimetre
    [InlineData("Danio rerio 2/3in", "2–3 in")]
    public void Parts_of_an_inch_are_no_range(string name, string size) =>
        Assert.Equal(size, List($"{Heading}\n\"{name.Replace("\"", "\"\"")}\";10;;;\n").Lines[0].Line.Size);

    private static PackingList List(string text)
    {
        using var file = new TemporaryList(text);
        var bag = new DiagnosticBag();
        var matcher = CollectionNames.Matcher(RealContent.Collection);
        var list = new PackingListReader(matcher, new RememberedAnswers([]), bag).Read(file.Path, "list.csv");
        Assert.True(list is not null, ToySite.Told(bag));
        return list;
    }

    private sealed class TemporaryList : IDisposable
    {
        public TemporaryList(string text) => File.WriteAllText(Path, text);

        public string Path { get; } = System.IO.Path.GetTempFileName();

        public void Dispose() => File.Delete(Path);
    }
}
