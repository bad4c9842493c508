using CareSheets.Commands;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Commands;

/// <summary>A name that moves: what follows is shown before, and everything moves at once.</summary>
public sealed class RenameTests
{
    [Fact]
    public void A_species_moves_with_author_former_names_links_and_address()
    {
        using var workshop = new Workshop();
        var rehearsal = Rehearse(workshop, "Danio margaritatus", "Celestichthys margaritatus");
        Assert.Equal("", rehearsal.Problem);
        Assert.Contains(rehearsal.Lines, l => l.Contains("author: Roberts, 2007 instead of (Roberts, 2007)"));
        Assert.Contains(rehearsal.Lines, l => l == "The genus Celestichthys gets a page.");
        Assert.Contains(rehearsal.Lines, l => l.Contains("relatives in its genus: none instead of Danio rerio"));
        Assert.True(File.Exists(workshop["content/species/danio-margaritatus.md"])); // nothing done yet

        Assert.Null(RenameCommand.Commit(rehearsal, workshop["content"]));
        Assert.False(File.Exists(workshop["content/species/danio-margaritatus.md"]));
        var text = File.ReadAllText(workshop["content/species/celestichthys-margaritatus.md"]);
        Assert.Contains("scientificName: Celestichthys margaritatus\n", text, StringComparison.Ordinal);
        Assert.Contains("scientificNameAuthorship: Roberts, 2007\n", text, StringComparison.Ordinal);
        Assert.Contains("formerNames: [Danio margaritatus]\n", text, StringComparison.Ordinal);
        Assert.Contains("(celestichthys-margaritatus.md)",
            File.ReadAllText(workshop["content/species/danio-rerio.md"]), StringComparison.Ordinal);
        var site = workshop.RunSite();
        site.AssertClean();
        Assert.Contains("celestichthys-margaritatus.html", site.Page("species/danio-margaritatus.html"));
    }

    [Fact]
    public void There_and_back_again_leaves_the_entry_as_it_was_but_for_the_order_of_former_names()
    {
        using var workshop = new Workshop();
        var before = File.ReadAllText(workshop["content/species/danio-rerio.md"]);
        Move(workshop, "Danio rerio", "Brachydanio rerio");
        Move(workshop, "Brachydanio rerio", "Danio rerio");
        Assert.Equal(before, File.ReadAllText(workshop["content/species/danio-rerio.md"]));
        workshop.RunSite().AssertClean();
    }

    [Fact]
    public void A_whole_genus_moves_and_its_adjectives_take_the_new_gender()
    {
        using var workshop = new Workshop();
        Move(workshop, "Danio", "Rasbora"); // Rasbora is feminine
        Assert.True(File.Exists(workshop["content/species/rasbora-margaritata.md"]));
        Assert.True(File.Exists(workshop["content/species/rasbora-rerio.md"]));
        workshop.RunSite().AssertClean();
    }

    [Fact]
    public void An_ending_that_no_longer_agrees_is_told_before()
    {
        using var workshop = new Workshop();
        var lines = Rehearse(workshop, "Danio margaritatus", "Rasbora margaritatus").Lines;
        Assert.Contains(lines, l => l.Contains("ending: Rasbora asks for margaritata"));
        Assert.Contains(lines, l => l.Contains("Then proof says NM901"));
    }

    [Fact]
    public void Borrowed_figures_arrivals_and_answers_follow()
    {
        using var workshop = new Workshop();
        workshop.Replace(
            "content/species/danio-margaritatus.md", "ph: 6.8–8.0",
            "ph: { keep: 6.8–8.0, evidence: { like: danio-rerio } }");
        workshop.Write("content/arrivals/2026-11-24-oldmere.yaml",
            "supplier: Oldmere\ndate: 2026-11-24\nbatches:\n  - said: danio-rerio\n    entry: danio-rerio\n" +
            "    taken: by hand\n  - said: x\n    perhaps: [danio-rerio, danio-margaritatus]\n");
        workshop.Write("content/arrivals/answers/oldmere.yaml",
            "supplier: Oldmere\nanswers:\n  - said: \"danio-rerio\"\n    entry: danio-rerio\n    since: 2026-11-24\n");
        Move(workshop, "Danio rerio", "Brachydanio rerio");
        var arrival = File.ReadAllText(workshop["content/arrivals/2026-11-24-oldmere.yaml"]);
        Assert.Contains("said: danio-rerio\n    entry: brachydanio-rerio", arrival, StringComparison.Ordinal);
        Assert.Contains("perhaps: [brachydanio-rerio, danio-margaritatus]", arrival, StringComparison.Ordinal);
        Assert.Contains("said: \"danio-rerio\"\n    entry: brachydanio-rerio",
            File.ReadAllText(workshop["content/arrivals/answers/oldmere.yaml"]), StringComparison.Ordinal);
        Assert.Contains("like: brachydanio-rerio",
            File.ReadAllText(workshop["content/species/danio-margaritatus.md"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Danio rario", "Danio rerio", "No entry is called Danio rario")]
    [InlineData("Danio rerio", "Betta splendens", "There is an entry of Betta splendens")]
    [InlineData("Danio rerio", "Celestichthys margaritatus", "is a former name of Danio margaritatus")]
    [InlineData("Danio rerio", "Danio rerio", "already")]
    [InlineData("Danio rerio", "Danio", "No entry is called")]
    [InlineData("", "", "No entry is called")]
    public void What_can_t_be_is_refused_with_its_reason(string from, string to, string reason)
    {
        using var workshop = new Workshop();
        Assert.Contains(reason, Rehearse(workshop, from, to).Problem, StringComparison.Ordinal);
    }

    private static NameRehearsal Rehearse(Workshop workshop, string from, string to) =>
        NameRehearsal.Of(from, to, new ContentSettings { Content = workshop["content"], Theme = workshop["theme"] });

    private static void Move(Workshop workshop, string from, string to)
    {
        var rehearsal = Rehearse(workshop, from, to);
        Assert.Equal("", rehearsal.Problem);
        Assert.Null(RenameCommand.Commit(rehearsal, workshop["content"]));
    }
}
