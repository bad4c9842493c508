using CareSheets.Collection;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Quantities;
using CareSheets.Rendering;
using CareSheets.Species;
using CareSheets.Tankmates;

namespace CareSheets.Tests.Support;

/// <summary>The toy content read and made into pages, in memory: nothing is written.</summary>
internal sealed class ToySite
{
    private ToySite(Site site, IReadOnlyDictionary<string, SpeciesProse> prose)
    {
        Site = site;
        Pages = PageSet.Make(site, Acquaintances.Of(site.Collection, site.Relatives.Suggest), prose);
    }

    public Site Site { get; }

    public IReadOnlyList<IPage> Pages { get; }

    public SpeciesCollection Collection => Site.Collection;

    /// <param name="units">The units to show.</param>
    /// <param name="change">What the content should say otherwise.</param>
    public static ToySite Read(UnitSystem units = UnitSystem.Both, Action<Workshop>? change = null)
    {
        using var workshop = new Workshop();
        change?.Invoke(workshop);
        var bench = new Workbench(new SiteSettings { Content = workshop["content"], Theme = workshop["theme"] });
        var collection = bench.ReadCollection();
        Assert.NotNull(collection);
        var prose = bench.RenderProse(collection);
        var words = bench.ReadWords();
        Assert.True(!bench.Bag.HasErrors && words is not null, Told(bench.Bag));
        var toy = new ToySite(new Site(collection, words, units) { Law = bench.Law }, prose);
        Assert.Empty(words.Missing);
        return toy;
    }

    public Entry Entry(string name) => Collection.Entries.Single(e => e.Name == name);

    public TPage At<TPage>(string address)
        where TPage : IPage => Assert.IsType<TPage>(Pages.Single(p => p.Address == address));

    public SpeciesPage Species(string name) => At<SpeciesPage>($"species/{name}.html");

    /// <summary>A row of a species' water by its label.</summary>
    public RangeRow Row(string species, string label) => Species(species).Water.Single(r => r.Label == label);

    public static string Told(DiagnosticBag bag) =>
        string.Join('\n', bag.Sorted().Select(d => $"{d.Code.Id} {d.Message}"));
}
