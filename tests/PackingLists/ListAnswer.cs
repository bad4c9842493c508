using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;
using CareSheets.Tests.Names;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>A list of tests/PackingLists/Lists with what a person who knows the trade says of each line.</summary>
/// <param name="Strain"><c>*</c> where nobody has said.</param>
/// <param name="Unclear">Whether a person would have to ask: yes, no, or <c>*</c> where nobody has said.</param>
internal sealed record ListAnswer(
    string List, int Line, string Entry, string Count, string Size, string Sex, string Provenance,
    string Strain, string Unclear)
{
    public const string Unsaid = "*";

    private static readonly string Folder = Repository.At("tests", "PackingLists", "Lists");

    private static readonly Lazy<IReadOnlyList<NamedSpecies>> Names = new(() =>
    [
        .. File.ReadLines(Path.Combine(Folder, "names.tsv")).Where(l => l[0] != '#').Select(l => l.Split('\t'))
            .Select(c => NameMatcherTests.Species(c[0], c[1], c[3], c[2])),
    ]);

    public static IEnumerable<string> Files { get; } =
    [
        .. Directory.GetFiles(Folder, "*.answers.tsv").Select(p => Path.GetFileName(p)[..^".answers.tsv".Length])
            .Order(StringComparer.Ordinal),
    ];

    public static IReadOnlyList<ListAnswer> Of(string file) =>
    [
        .. File.ReadLines(Path.Combine(Folder, file + ".answers.tsv")).Skip(1).Select(l => l.Split('\t'))
            .Select(c => new ListAnswer(
                file, int.Parse(c[0], CultureInfo.InvariantCulture), c[1], c[2], c[3], c[4], c[5],
                c.ElementAtOrDefault(6) ?? Unsaid, c.ElementAtOrDefault(7) ?? Unsaid)),
    ];

    public static PackingList Read(string file)
    {
        var bag = new DiagnosticBag();
        var reader = new PackingListReader(
            new NameMatcher(new NameIndex(Names.Value), GenusTable.Known), new RememberedAnswers([]), bag);
        var list = reader.Read(Path.Combine(Folder, file), file);
        Assert.True(list is not null, ToySite.Told(bag));
        return list!;
    }
}
