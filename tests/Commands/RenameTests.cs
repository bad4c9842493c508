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
    public void The_record_of_printed_cards_goes_along_so_that_the_old_card_is_stale()
    {
        using var workshop = new Workshop();
        const string Line = "  - { size: A6 portrait, mark: ABC-DEF, printed: 2026-11-20 }";
        workshop.Write("content/printed.yaml", $"danio-margaritatus:\n{Line}\ndanio-rerio:\n{Line}\n");
        Move(workshop, "Danio margaritatus", "Celestichthys margaritatus");
        Assert.Equal(
            $"celestichthys-margaritatus:\n{Line}\ndanio-rerio:\n{Line}\n",
            File.ReadAllText(workshop["content/printed.yaml"]));
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
    public void A_name_that_was_a_mistake_may_be_taken_out_once_it_is_undone()
    {
        using var workshop = new Workshop();
        Assert.DoesNotContain(Rehearse(workshop, "Danio rerio", "Rasbora rerio").Lines, l => l.Contains("mistake"));
        Move(workshop, "Danio rerio", "Rasbora rerio");
        Assert.Contains(
            "  Rasbora rerio stays among them; if it was a mistake, take it out of formerNames by hand",
            Rehearse(workshop, "Rasbora rerio", "Danio rerio").Lines);
    }

    [Fact]
    public void Two_genera_that_become_one_are_told_there_and_back()
    {
        using var workshop = new Workshop();
        Assert.DoesNotContain(Rehearse(workshop, "Danio", "Rasbora").Lines, l => l.Contains("already"));
        workshop.Write("content/species/rasbora-nova.md", File.ReadAllText(workshop["content/species/danio-rerio.md"])
            .Replace("scientificName: Danio rerio", "scientificName: Rasbora nova").Replace("zebra danio", "new fish")
            .Replace("originalNameUsage: Cyprinus rerio", "originalNameUsage: Cyprinus nova")
            .Replace("formerNames: [", "formerNames: [] # ["));
        Assert.Contains(Rehearse(workshop, "Danio", "Rasbora").Lines, l => l.StartsWith(
            "Rasbora has entries already: Rasbora nova. A later rename of the whole genus takes them along",
            StringComparison.Ordinal));
        Move(workshop, "Danio", "Rasbora");
        Assert.Contains(Rehearse(workshop, "Rasbora", "Danio").Lines, l => l.StartsWith(
            "By their entries these never had the new name, and move along: Rasbora nova.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Danio rerio", "Brachydanio Rerio", "Brachydanio Rerio can't be", "Did you mean Brachydanio rerio?")]
    [InlineData("Danio rerio", "brachydanio rerio", "brachydanio rerio can't be", "Did you mean Brachydanio rerio?")]
    [InlineData("Danio rerio", "Brachydanio", "Brachydanio can't be a new name", "as in Danio rerio.")]
    [InlineData("Danio", "brachydanio", "brachydanio can't be a new name", "Did you mean Brachydanio?")]
    [InlineData("Dano rerio", "Brachydanio rerio", "No entry is called Dano rerio today", "Did you mean Danio rerio?")]
    public void The_name_that_is_wrong_is_the_one_that_is_told(string from, string to, string begins, string ends)
    {
        using var workshop = new Workshop();
        var problem = Rehearse(workshop, from, to).Problem;
        Assert.StartsWith(begins, problem, StringComparison.Ordinal);
        Assert.EndsWith(ends, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_genus_moves_and_its_adjectives_take_the_new_gender()
    {
        using var workshop = new Workshop();
        Move(workshop, "Danio", "Rasbora"); // Rasbora is feminine
        Assert.True(File.Exists(workshop["content/species/rasbora-margaritata.md"]));
        Assert.True(File.Exists(workshop["content/species/rasbora-rerio.md"]));
        var site = workshop.RunSite();
        site.AssertClean();
        Assert.Contains("href=\"../genera/rasbora.html\"", site.Page("genera/danio.html"));
    }

    [Fact]
    public void A_genus_whose_species_went_two_ways_leads_on_to_both()
    {
        using var workshop = new Workshop();
        Move(workshop, "Danio margaritatus", "Celestichthys margaritatus");
        Assert.Contains("species/danio-rerio.html", workshop.RunSite().Page("genera/danio.html"));
        Move(workshop, "Danio rerio", "Brachydanio rerio");
        var site = workshop.RunSite();
        site.AssertClean();
        Assert.Contains("href=\"../genera/brachydanio.html\"", site.Page("genera/danio.html"));
        Assert.Contains("href=\"../genera/celestichthys.html\"", site.Page("genera/danio.html"));
    }

    [Theory]
    [InlineData("[Danio rerio, Betta]", "Danio rerio", "Rasbora rerio", "[Rasbora rerio, Betta]")]
    [InlineData("[Danio]", "Danio", "Rasbora", "[Rasbora]")]
    [InlineData("[Danio]", "Danio rerio", "Brachydanio rerio", "[Danio, Brachydanio rerio]")] // others stay in it
    [InlineData("[Danionidae]", "Danio", "Rasbora", "[Danionidae]")]
    [InlineData("\n    - Danio\n    - Danionidae", "Danio", "Rasbora", "\n    - Rasbora\n    - Danionidae")]
    public void Taxa_that_an_entry_is_kept_apart_from_follow(string names, string from, string to, string expected)
    {
        using var workshop = new Workshop();
        const string file = "content/species/betta-splendens.md";
        workshop.Replace(file, "company: { lives: alone, group: 1, own kind: fierce, others: feisty, level: [top] }",
            "company:\n  lives: alone\n  group: 1\n  own kind: fierce\n  others: feisty\n" +
            $"  not with: {names}\n  level: [top]");
        Move(workshop, from, to);
        Assert.Contains($"  not with: {expected}\n  level", File.ReadAllText(workshop[file]), StringComparison.Ordinal);
        workshop.RunSite().AssertClean();
    }

    /// <summary>A hazard that no longer concerns a fish because its name moved would be a danger to people.</summary>
    [Theory]
    [InlineData("taxon is Danio", "Danio", "Rasbora", "taxon is Danio or Rasbora")]
    [InlineData("taxon is Betta or\n      Danio", "Danio", "Rasbora", "taxon is Betta or\n      Danio or Rasbora")]
    [InlineData("taxon is not Danio or Rasbora", "Danio", "Rasbora", "taxon is not Danio or Rasbora")]
    [InlineData("taxon is Danio rerio or Betta", "Danio rerio", "Rasbora rerio", "taxon is Rasbora rerio or Betta")]
    [InlineData("taxon is Danio", "Danio rerio", "Brachydanio rerio", "taxon is Danio")] // others stay in it
    public void Conditions_on_taxa_follow(string condition, string from, string to, string expected)
    {
        using var workshop = new Workshop();
        workshop.Write("content/hazards.yaml", Hazard(condition));
        Move(workshop, from, to);
        Assert.Contains($"when: [{expected}]",
            File.ReadAllText(workshop["content/hazards.yaml"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_inherited_a_hazard_by_genus_inherits_it_under_the_new_name()
    {
        using var workshop = new Workshop();
        workshop.Write("content/hazards.yaml", Hazard("taxon is Danio"));
        Assert.Contains("A made-up danger", workshop.RunSite().Page("species/danio-rerio.html"));
        Move(workshop, "Danio", "Rasbora");
        Assert.Contains("A made-up danger", workshop.RunSite().Page("species/rasbora-rerio.html"));
    }

    [Fact]
    public void Where_the_content_still_says_the_old_name_is_told_by_file_and_line()
    {
        using var workshop = new Workshop();
        workshop.Replace("content/species/danio-margaritatus.md", "\n---\n", "\n---\nUnlike Danio rerio it hides.\n\n");
        var line = File.ReadAllLines(workshop["content/species/danio-margaritatus.md"]).ToList()
            .FindIndex(l => l.Contains("Unlike", StringComparison.Ordinal)) + 1;
        Assert.Contains(
            $"species/danio-margaritatus.md still says Danio rerio (line {line}): read it through.",
            Rehearse(workshop, "Danio rerio", "Brachydanio rerio").Lines);
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
    [InlineData("Danio rerio", "Danio", "Danio can't be a new name: write a genus")]
    [InlineData("", "", "Nothing can't be a new name")]
    public void What_can_t_be_is_refused_with_its_reason(string from, string to, string reason)
    {
        using var workshop = new Workshop();
        Assert.Contains(reason, Rehearse(workshop, from, to).Problem, StringComparison.Ordinal);
    }

    private static string Hazard(string condition) => File.ReadAllText(
        Repository.At("tests", "Support", "Toy", "hazards.yaml")) + $"""

        made-up:
          kind: shock
          when: [{condition}]
          says: A made-up danger that a doctor is to be told of.
          brief: A made-up danger.
          told by: [doctor]
          evidence: common practice

        """;

    private static NameRehearsal Rehearse(Workshop workshop, string from, string to) =>
        NameRehearsal.Of(from, to, new ContentSettings { Content = workshop["content"], Theme = workshop["theme"] });

    private static void Move(Workshop workshop, string from, string to)
    {
        var rehearsal = Rehearse(workshop, from, to);
        Assert.Equal("", rehearsal.Problem);
        Assert.Null(RenameCommand.Commit(rehearsal, workshop["content"]));
    }
}
