using System.Diagnostics;
using System.Globalization;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.Tests.Names;

// 1,000 lines of a list, two thirds with slips, against 10,000 made-up names. The aim is under two seconds.
const int names = 10_000;
const int lines = 1_000;
var species = MadeUpNames.Species(names);
var texts = MadeUpNames.Lines(names, lines);
for (var round = 1; round <= 5; round++)
{
    var indexing = Stopwatch.StartNew();
    var matcher = new NameMatcher(new NameIndex(species), GenusTable.Known);
    indexing.Stop();
    var matching = Stopwatch.StartNew();
    var taken = texts.Count(t => matcher.Match(WrittenName.Of(t)).Taken is not null);
    matching.Stop();
    Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"round {round}: index {indexing.ElapsedMilliseconds} ms, {lines} lines {matching.ElapsedMilliseconds} ms, " +
        $"{taken} taken without asking"));
}
