using System.Text.Json;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>From a supplier's file to the arrival on the disk: what is written, remembered and kept.</summary>
public sealed class ReceivingTests
{
    private const string List =
        "Supplier Oldmere\nLatin name;Size;Qty;Price\nDanio rerio;3-4 cm;50;0,40\nBrachydanio rerio;M;20;0,45\n" +
        "Dannio reiro;3 cm;10;0,40\nDanio kyathit;4 cm;10;1,90\nTotal;;90;\n";

    [Fact]
    public void A_list_becomes_an_arrival_that_the_site_accepts()
    {
        using var workshop = new Workshop();
        var (receipt, bag) = Receive(workshop, List);
        Assert.True(receipt is not null, ToySite.Told(bag));
        Assert.Equal(["danio-rerio", "danio-rerio", null, null], receipt.List.Lines.Select(l => l.Entry));
        var site = workshop.RunSite();
        Assert.True(site.Outcome is not null, site.Printed);
        Assert.Equal(["AR907", "AR907"], site.Found.Select(d => d.Code.Id).Order());
        Assert.Equal(List, File.ReadAllText(workshop["content/arrivals/2026-11-24-oldmere.csv"]));
        Assert.Contains("said: \"Dannio reiro;3 cm;10;0,40\"", Arrival(workshop), StringComparison.Ordinal);
        Assert.Contains("is no fish (a total, freight or the like): Total;;90;", Arrival(workshop));
    }

    [Fact]
    public void An_answer_is_remembered_for_the_supplier_and_for_no_other()
    {
        using var workshop = new Workshop();
        Assert.NotNull(Receive(workshop, List, answers: "5=danio-rerio").Receipt);
        var answers = File.ReadAllText(workshop["content/arrivals/answers/oldmere.yaml"]);
        Assert.Contains("said: \"Dannio reiro\"\n    entry: danio-rerio\n    since: 2026-11-24", answers);
        var later = Receive(workshop, List.Replace(";10;", ";70;"), day: "2026-12-01").Receipt!;
        Assert.Equal("danio-rerio", later.List.Lines[2].Entry);
        Assert.Equal(CareSheets.Arrivals.NameTaken.Answered, later.List.Lines[2].Taken);
        Assert.Null(Receive(workshop, List, supplier: "Other").Receipt!.List.Lines[2].Entry);
    }

    [Fact]
    public void What_a_person_wrote_into_an_arrival_is_learnt()
    {
        using var workshop = new Workshop();
        Receive(workshop, List);
        var path = "content/arrivals/2026-11-24-oldmere.yaml";
        workshop.Replace(path, "    perhaps: [danio-rerio",
            "    entry: danio-rerio\n    taken: by hand\n    perhaps: [danio-rerio");
        Assert.Equal("danio-rerio", Receive(workshop, List, day: "2026-12-01").Receipt!.List.Lines[2].Entry);
    }

    [Fact]
    public void What_is_there_is_left_alone_unless_it_is_asked_for_and_then_kept()
    {
        using var workshop = new Workshop();
        Receive(workshop, List);
        var before = Arrival(workshop) + "# reviewed\n";
        workshop.Write("content/arrivals/2026-11-24-oldmere.yaml", before);
        var (receipt, bag) = Receive(workshop, List);
        Assert.Null(receipt);
        Assert.Contains(bag.Sorted(), d => d.Code.Id == "AR958");
        Assert.Equal(before, Arrival(workshop));
        Assert.NotNull(Receive(workshop, List, again: true).Receipt);
        Assert.NotEqual(before, Arrival(workshop));
        Assert.Equal(before, File.ReadAllText(workshop["content/arrivals/.2026-11-24-oldmere.before-1.yaml"]));
    }

    [Theory]
    [InlineData("99=danio-rerio")]
    [InlineData("5=danio-rario")]
    [InlineData("nonsense")]
    public void An_answer_that_leads_nowhere_is_told_and_nothing_is_written(string answer)
    {
        using var workshop = new Workshop();
        var (receipt, bag) = Receive(workshop, List, answers: answer);
        Assert.Null(receipt);
        Assert.Contains(bag.Sorted(), d => d.Code.Id == "AR959");
        Assert.False(Directory.Exists(workshop["content/arrivals"]));
    }

    [Fact]
    public void What_can_t_be_written_leaves_everything_as_it_was()
    {
        using var workshop = new Workshop();
        Directory.CreateDirectory(workshop["content/arrivals/2026-11-24-oldmere.csv"]); // in the way of the list
        var (receipt, bag) = Receive(workshop, List);
        Assert.Null(receipt);
        Assert.Contains(bag.Sorted(), d => d.Code.Id == "AR960");
        Assert.Empty(Directory.GetFiles(workshop["content/arrivals"]));
        Assert.False(File.Exists(workshop["content/species/danio-kyathit.md"]));
    }

    [Fact]
    public void Programs_read_parts_reasons_and_runners_up()
    {
        using var workshop = new Workshop();
        var (receipt, bag) = Receive(workshop, List, look: true);
        using var json = JsonDocument.Parse(PackingListJson.Print(receipt, bag.Sorted()));
        Assert.False(json.RootElement.GetProperty("written").GetBoolean());
        var asked = json.RootElement.GetProperty("lines")[2];
        Assert.Equal("danio-rerio", asked.GetProperty("perhaps")[0].GetProperty("entry").GetString());
        Assert.InRange(asked.GetProperty("perhaps")[0].GetProperty("sureness").GetDouble(), 0.5, 0.95);
        Assert.Equal(JsonValueKind.Null, asked.GetProperty("entry").ValueKind);
        Assert.False(Directory.Exists(workshop["content/arrivals"]));
    }

    [Fact]
    public void A_name_of_a_law_stands_out_with_and_without_an_entry_and_as_a_runner_up()
    {
        using var workshop = new Workshop();
        foreach (var path in Directory.GetFiles(Repository.At("content", "regulations")))
            workshop.Write($"content/regulations/{Path.GetFileName(path)}", File.ReadAllText(path));
        const string list = "Name;Qty\nHypancistrus zebra;4\nDanio rerio;10\n";
        var (receipt, bag) = Receive(workshop, list);
        Assert.True(receipt is not null, ToySite.Told(bag));
        Assert.Contains("Appendix II; ask", Assert.Single(receipt.List.Lines[0].Law));
        Assert.StartsWith("if it is Hypancistrus zebra: controlled in trade by", receipt.List.Lines[0].Law[0]);
        Assert.Empty(receipt.List.Lines[1].Law);
        Assert.Contains("  # LAW: if it is Hypancistrus zebra", Arrival(workshop));
    }

    private static string Arrival(Workshop workshop) =>
        File.ReadAllText(workshop["content/arrivals/2026-11-24-oldmere.yaml"]);

    private static (Receipt? Receipt, DiagnosticBag Bag) Receive(
        Workshop workshop, string list, string supplier = "Oldmere", string day = "2026-11-24",
        string? answers = null, bool again = false, bool look = false)
    {
        workshop.Write("list.csv", list);
        var settings = new PackingListSettings
        {
            Content = workshop["content"],
            File = workshop["list.csv"],
            SupplierName = supplier,
            DayText = day,
            Answers = answers is null ? [] : [answers],
            Again = again,
            LookOnly = look,
        };
        Assert.True(settings.Validate().Successful);
        var bench = new Workbench(settings);
        return (PackingListCommand.Receive(bench, settings), bench.Bag);
    }
}
