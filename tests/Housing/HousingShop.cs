using CareSheets.Collection;
using CareSheets.Commands;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Housing;

/// <summary>The toy collection in a shop with waters of its own.</summary>
internal static class HousingShop
{
    public const string Waters = """
        tap: { temperature: 12 °C, ph: 7.6, hardness: 12 °dH, carbonateHardness: 9 °dKH }
        systems:
          - { name: Soft, temperature: 25.5 °C, ph: 6.2, hardness: 3 °dH, carbonateHardness: 1.5 °dKH }
          - { name: Hard, temperature: 25 °C, ph: 7.9, hardness: 22 °dH, carbonateHardness: 12 °dKH }
          - { name: Warm, temperature: 29.5 °C, ph: 7.0, hardness: 8 °dH }
          - { name: Odd, ph: 7.0, salinity: 3 g/L }

        """;

    public static SpeciesCollection Read(string store = Waters, params (string File, string From, string To)[] changes)
    {
        using var workshop = new Workshop();
        File.AppendAllText(workshop["content/store.yaml"], store);
        foreach (var (file, from, to) in changes)
            workshop.Replace($"content/species/{file}.md", from, to);
        var bench = new Workbench(new SiteSettings { Content = workshop["content"], Theme = workshop["theme"] });
        var collection = bench.ReadCollection();
        Assert.Empty(bench.Bag.Sorted());
        return collection!;
    }
}
