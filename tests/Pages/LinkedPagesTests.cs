using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Pages.Waters;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages;

/// <summary>Which pages there are and how they lead to one another.</summary>
public sealed class LinkedPagesTests
{
    private static readonly ToySite Toy = ToySite.Read();

    [Fact]
    public void Every_page_has_an_address_of_its_own()
    {
        var addresses = Toy.Pages.Select(p => p.Address).Distinct(StringComparer.OrdinalIgnoreCase);
        Assert.Equal(Toy.Pages.Count, addresses.Count());
        Assert.All(Toy.Pages, p => Assert.Matches("^([a-z]+/)?[a-z0-9-]+\\.html$", p.Address));
    }

    [Fact]
    public void Species_and_papers_of_all_entries_are_there()
    {
        Assert.Equal(3, Toy.Pages.OfType<SpeciesPage>().Count());
        Assert.Equal(3, Toy.Pages.OfType<HomeSheet>().Count());
        Assert.Equal(3, Toy.Pages.OfType<TankCard>().Count());
        Assert.Equal(2, Toy.Pages.OfType<MovedPage>().Count());
    }

    [Fact]
    public void Relatives_are_those_of_the_genus_and_then_of_the_family()
    {
        var group = Assert.Single(Toy.Species("danio-rerio").Relatives);
        Assert.Equal("Other species of Danio", group.Heading);
        Assert.Equal(new Link("Danio", "../genera/danio.html", true), group.HeadingLink);
        Assert.Equal("../species/danio-margaritatus.html", Assert.Single(group.Species).Href);
    }

    [Fact]
    public void A_species_is_not_its_own_relative_and_one_without_any_has_no_group()
    {
        Assert.DoesNotContain(Toy.Pages.OfType<SpeciesPage>(),
            p => p.Relatives.SelectMany(g => g.Species).Any(r => r.ScientificName == p.ScientificName));
        Assert.Empty(Toy.Species("betta-splendens").Relatives);
    }

    [Fact]
    public void A_relative_of_another_genus_stands_under_the_family()
    {
        var toy = ToySite.Read(change: w =>
        {
            w.Replace("content/species/betta-splendens.md", "order: Anabantiformes", "order: Cypriniformes");
            w.Replace("content/species/betta-splendens.md", "family: Osphronemidae", "family: Danionidae");
        });
        Assert.Equal(["Other species of Danio", "Others of the family Danionidae"],
            toy.Species("danio-rerio").Relatives.Select(g => g.Heading));
        Assert.Equal(
            ["Betta splendens"], toy.Species("danio-rerio").Relatives[1].Species.Select(s => s.ScientificName));
    }

    [Fact]
    public void A_former_name_is_a_page_that_leads_to_the_new_one_and_is_not_listed()
    {
        var moved = Toy.At<MovedPage>("species/brachydanio-rerio.html");
        Assert.Equal(("Brachydanio rerio", "Danio rerio", "zebra danio", "../species/danio-rerio.html"),
            (moved.FormerName, moved.ScientificName, moved.VernacularName, moved.Href));
        Assert.False(moved.Frame.IsListed);
    }

    [Fact]
    public void Papers_are_not_listed_and_pages_are() =>
        Assert.Equal(
            Toy.Pages.Where(p => p is HomeSheet or TankCard or PapersPage or FlaggedPage or WherePage or EvidencePage
                or MovedPage or MovedGenusPage)
                .Select(p => p.Address),
            Toy.Pages.Where(p => !p.Frame.IsListed).Select(p => p.Address));

    [Fact]
    public void The_menu_marks_the_page_itself_and_no_other()
    {
        var list = Toy.At<SpeciesListPage>("species/index.html").Frame;
        Assert.Equal(["All species"], list.Menu.Where(m => m.IsCurrent).Select(m => m.Text));
        Assert.Equal("../", list.Root);
        Assert.Equal("../index.html", list.Menu[0].Href);
        Assert.Equal("", Toy.At<HomePage>("index.html").Frame.Root);
    }

    [Fact]
    public void Countries_have_their_names_and_waters_their_own_addresses()
    {
        var origins = Toy.At<OriginsPage>("origins/index.html");
        Assert.Equal(
            ["South-eastern Asia: Myanmar, Thailand", "Southern Asia: Bangladesh, India"],
            origins.Regions.Select(r => $"{r.Name}: {string.Join(", ", r.Countries.Select(c => c.Text))}"));
        Assert.Equal(["../origins/water-ganges-basin.html", "../origins/water-salween-basin.html"],
            origins.Waters.Select(w => w.Href));
        Assert.Equal("Danio rerio", Assert.Single(Toy.At<OriginPage>("origins/in.html").Species).ScientificName);
    }

    [Fact]
    public void A_search_finds_old_names_family_and_place_as_the_field_promises()
    {
        var danio = Toy.Entry("danio-rerio");
        Assert.Superset(
            new HashSet<string> { "zebra danio", "Danio rerio", "Brachydanio rerio" },
            FindData.Names(danio).ToHashSet());
        Assert.Superset(
            new HashSet<string> { "Danionidae", "India", "Ganges basin", "Southern Asia", "Asia" },
            FindData.Beyond(danio, Toy.Site).ToHashSet());
    }
}
