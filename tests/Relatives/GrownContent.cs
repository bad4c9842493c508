using System.Globalization;
using System.Text.RegularExpressions;
using CareSheets.Commands;
using CareSheets.Relatives;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>A content folder grown from a list: name, family, order, temperature and pH, empty if unknown.</summary>
internal sealed partial class GrownContent : IDisposable
{
    private readonly Workshop _workshop = new();
    private readonly string _first;

    public GrownContent(
        IReadOnlyList<(string Name, string Family, string Order, string Temperature, string Acidity)> species,
        string store = "")
    {
        Directory.Delete(_workshop["content/species"], recursive: true);
        foreach (var one in species)
            _workshop.Write($"content/species/{Slug(one.Name)}.md", Text(one));
        var text = File.ReadAllText(_workshop["content/store.yaml"]).TrimEnd();
        _workshop.Write("content/store.yaml", $"{text}\n{store}\n");
        _first = Slug(species[0].Name);
    }

    public Workshop Workshop => _workshop;

    public static string Epithet(int number) => $"{(char)('a' + number)}lbus";

    public static string Capital(int number) => $"{(char)('A' + number)}quat";

    public Run Run()
    {
        var run = _workshop.RunSite();
        Assert.True(run.Outcome is not null, run.Printed);
        return run;
    }

    public RelativesEngine Engine()
    {
        var bench = new Workbench(new ContentSettings { Content = _workshop["content"] });
        return RelativesEngine.Ask(bench.ReadCollection()!);
    }

    public Entry Entry(int number) =>
        Engine().Collection.Entries.OrderBy(e => e.Name == _first ? 0 : 1).ElementAt(number);

    /// <summary>No page shows a number that is none.</summary>
    public void AssertNoNonsense()
    {
        var pages = Directory.GetFiles(_workshop.Site, "*.html", SearchOption.AllDirectories);
        Assert.NotEmpty(pages);
        Assert.All(pages, p => Assert.DoesNotMatch(Nonsense(), File.ReadAllText(p)));
    }

    public void Dispose() => _workshop.Dispose();

    private static string Slug(string name) => name.ToLower(CultureInfo.InvariantCulture).Replace(' ', '-');

    private static string Text((string Name, string Family, string Order, string Temperature, string Acidity) one)
    {
        var care = (one.Temperature.Length > 0 ? $"  temperature: {one.Temperature}\n" : "") +
            (one.Acidity.Length > 0 ? string.Create(CultureInfo.InvariantCulture, $"  ph: {one.Acidity}\n") : "");
        return $$"""
            ---
            scientificName: {{one.Name}}
            scientificNameAuthorship: Hamilton, 1822
            originalNameUsage: {{one.Name}}
            vernacularName: [fish {{Slug(one.Name)}}]
            order: {{one.Order}}
            family: {{one.Family}}
            origin: { countryCode: [IN] }
            adult: { length: 5 cm TL, shape: fusiform, mouth: small }
            care:
            {{care}}  flow: moderate
            tank: { length: 80 cm, volume: 100 L, substrate: any, lid: yes }
            company: { lives: shoal, group: 8, own kind: peaceful, others: peaceful, level: [top], eats: [] }
            diet: [omnivore]
            evidence: common practice
            reviewed: 2026-10-02
            ---
            A fish of a test.

            """;
    }

    [GeneratedRegex(@"\bNaN\b|Infinity|∞")]
    private static partial Regex Nonsense();
}
