using CareSheets.Collection;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Collection;

/// <summary>Looking things up in the linked collection.</summary>
public sealed class SpeciesCollectionTests
{
    private static readonly SpeciesCollection Toy = ToySite.Read().Collection;

    [Theory]
    [InlineData("danio-rerio", "Danio rerio")]
    [InlineData("brachydanio-rerio", "Danio rerio")]
    [InlineData("celestichthys-margaritatus", "Danio margaritatus")]
    [InlineData("no-such-fish", null)]
    [InlineData("Danio rerio", null)]
    [InlineData("", null)]
    public void An_entry_is_found_by_todays_and_by_former_names(string name, string? found) =>
        Assert.Equal(found, Toy.Find(name)?.ScientificName.Value.ToString());

    [Fact]
    public void Entries_stand_in_order_of_their_names() =>
        Assert.Equal(["Betta splendens", "Danio margaritatus", "Danio rerio"],
            Toy.Entries.Select(e => e.ScientificName.Value.ToString()));

    [Fact]
    public void Taxa_know_their_parents_and_their_entries()
    {
        Assert.Equal(["Anabantiformes", "Cypriniformes"], Toy.Orders.Select(t => t.Name));
        Assert.Equal([("Danionidae", "Cypriniformes"), ("Osphronemidae", "Anabantiformes")],
            Toy.Families.Select(t => (t.Name, t.Parent)));
        var danio = Toy.Genera.Single(g => g.Name == "Danio");
        Assert.Equal(("Danionidae", TaxonRank.Genus, 2), (danio.Parent, danio.Rank, danio.Entries.Count));
    }

    [Fact]
    public void Congeners_leave_out_the_species_itself()
    {
        Assert.Equal(["danio-margaritatus"], Toy.Congeners(Toy.Find("danio-rerio")!).Select(e => e.Name));
        Assert.Empty(Toy.Congeners(Toy.Find("betta-splendens")!));
        Assert.Empty(Toy.FamilyBeyondGenus(Toy.Find("danio-rerio")!));
    }

    [Fact]
    public void Countries_and_waters_hold_their_entries()
    {
        Assert.Equal(["BD", "IN", "MM", "TH"], Toy.Countries.Keys);
        Assert.Equal(["danio-rerio"], Toy.Countries["IN"].Select(e => e.Name));
        Assert.Equal(["Ganges basin", "Salween basin"], Toy.Waters.Keys);
    }

    [Fact]
    public void Former_names_lead_to_todays()
    {
        Assert.Equal(["brachydanio-rerio", "celestichthys-margaritatus"], Toy.FormerNames.Keys);
        Assert.Equal("danio-rerio", Toy.FormerNames["brachydanio-rerio"].Entry.Name);
    }

    [Fact]
    public void Every_water_of_an_entry_holds_it()
    {
        var toy = ToySite.Read(change: w => w.Replace("content/species/danio-rerio.md",
            "waterBody: [Ganges basin]", "waterBody: [Ganges basin, Indus basin]")).Collection;
        Assert.Equal(["Ganges basin", "Indus basin", "Salween basin"], toy.Waters.Keys);
        Assert.All(toy.Waters.Values, entries => Assert.Single(entries));
    }
}
