using CareSheets.Pages;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Regulations;

/// <summary>What visitors read of the law: list, clause and date, and the authority's last word, always.</summary>
public sealed class LawOnPagesTests
{
    [Fact]
    public void Every_page_and_sheet_sends_the_reader_to_the_authority_and_none_says_allowed()
    {
        foreach (var name in RealSite.Entries)
        {
            var law = LawOf($"species/{name}.html");
            Assert.Contains("confirm with the authority", law, StringComparison.Ordinal);
            Assert.Contains("Not checked: England's order", law, StringComparison.Ordinal);
            Assert.DoesNotMatch("(?i)is (allowed|lawful|legal)(?! *:)(?! *: confirm)", law.Replace(
                "none of this means that a fish is allowed", "", StringComparison.Ordinal));
            var sheet = RealSite.Pages[$"papers/sheet-{name}.html"].Body!.TextContent;
            Assert.Contains("Confirm with the authority.", sheet, StringComparison.Ordinal);
            Assert.Contains("This sheet covers: ", sheet, StringComparison.Ordinal);
            Assert.DoesNotMatch("(?i)complies|as the law requires|lawfully", sheet);
        }
    }

    [Fact]
    public void A_listed_fish_says_so_on_page_sheet_and_card_with_list_clause_and_date()
    {
        // It was listed in 2022: the day of the list alone would say that it was there before.
        const string named = "Appendix II, names Hypancistrus zebra (listed in 2022; zero quota for wild specimens " +
            "traded commercially; the list otherwise: as of 24 June 2010)";
        Assert.Contains(named, LawOf("species/hypancistrus-zebra.html"), StringComparison.Ordinal);
        string[] papers =
        [
            "sheet-hypancistrus-zebra", "docket-2026-11-24-larkwater-imports", "notes-2026-11-24-larkwater-imports",
        ];
        Assert.All(papers, paper => Assert.Contains(
            named, RealSite.Pages[$"papers/{paper}.html"].Body!.TextContent, StringComparison.Ordinal));
        var card = RealSite.Pages["papers/card-hypancistrus-zebra.html"].Body!.TextContent;
        var words = string.Join(' ', card.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Appendices of CITES, Appendix II", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fish_on_no_list_is_not_found_as_of_a_day() => Assert.Contains(
        "Not found in the lists checked: Appendices of CITES (as of 24 June 2010",
        LawOf("species/danio-rerio.html"), StringComparison.Ordinal);

    [Fact]
    public void A_shop_without_lists_says_that_none_was_looked_at() => Assert.Equal(
        ["No list of law has been looked at."], ToySite.Read().Species("danio-rerio").Law.Here);

    private static string LawOf(string address) => RealSite.Pages[address].QuerySelectorAll("section.question")
        .Single(s => s.QuerySelector("h2")!.TextContent == "What do the lists of law say?").TextContent;
}
