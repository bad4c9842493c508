using System.Diagnostics;
using System.Text.Json;
using CareSheets.Commands;
using CareSheets.Tests.Support;
using UglyToad.PdfPig;

namespace CareSheets.Tests.Commands;

/// <summary>Cards as staff print them: all, some, those out of date, and what is put on record.</summary>
public sealed class CardsCommandTests
{
    private const string Record = "content/printed.yaml";

    [Fact]
    public void All_cards_come_on_sheets_with_marks_and_go_on_record()
    {
        using var workshop = new Workshop();
        var (code, text, errors) = Call(workshop, "--today", "2026-11-25");
        Assert.True(code == 0, errors);
        Assert.Equal("3 cards on 1 sheet: cards/tank-cards-a6.html.\n", text);
        var sheet = File.ReadAllText(workshop["cards/tank-cards-a6.html"]);
        Assert.Equal(3, sheet.Split("class=\"card\"").Length - 1);
        Assert.Contains("size: 210mm 297mm; margin: 0;", File.ReadAllText(workshop["cards/tank-cards-a6.css"]),
            StringComparison.Ordinal);
        var lines = File.ReadAllLines(workshop[Record]).Where(l => !l.StartsWith('#')).ToList();
        Assert.Equal(["betta-splendens:", "danio-margaritatus:", "danio-rerio:"], lines.Where(l => l[0] != ' '));
        Assert.All(lines.Where(l => l[0] == ' '), l =>
            Assert.Matches("^  - { size: A6, mark: [A-Z]{3}-[A-Z]{3}, printed: 2026-11-25 }$", l));
    }

    [Fact]
    public void A_trial_leaves_no_record()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "danio-rerio", "--trial", "--size", "90x55mm", "--paper", "none");
        Assert.Equal(0, code);
        Assert.Contains("1 card on 1 sheet: cards/tank-cards-90x55-mm.html. A trial", text, StringComparison.Ordinal);
        Assert.False(File.Exists(workshop[Record]));
        Assert.Contains("size: 90mm 55mm;", File.ReadAllText(workshop["cards/tank-cards-90x55-mm.css"]),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Stale_prints_only_cards_that_show_something_else_now()
    {
        using var workshop = new Workshop();
        Call(workshop, "--today", "2026-11-20");
        Call(workshop, "danio-rerio", "--size", "A7", "--today", "2026-11-20");
        Assert.Equal(
            "Every card on record shows what its entry says: nothing to print.\n", Call(workshop, "--stale").Text);
        workshop.Replace("content/species/danio-rerio.md", "18–27 °C", "19–27 °C");
        workshop.Replace("content/species/betta-splendens.md", "reviewed: 2026-", "reviewed: 2025-"); // no fact
        var (code, text, _) = Call(workshop, "--stale", "--today", "2026-11-25");
        Assert.Equal(0, code);
        Assert.Contains("danio-rerio: the A6 card of 2026-11-20 shows", text, StringComparison.Ordinal);
        Assert.Contains("danio-rerio: the A7 card of 2026-11-20 shows", text, StringComparison.Ordinal);
        Assert.Contains("2 cards on 2 sheets: cards/tank-cards-a6.html, cards/tank-cards-a7.html.", text,
            StringComparison.Ordinal);
        Assert.DoesNotContain("betta", text, StringComparison.Ordinal);
        var record = File.ReadAllText(workshop[Record]);
        Assert.Equal(2, record.Split("2026-11-25").Length - 1);
        Assert.Equal(2, record.Split("2026-11-20").Length - 1);
        Assert.StartsWith("Every card", Call(workshop, "--stale").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_record_no_card_is_called_right()
    {
        using var workshop = new Workshop();
        var (code, text, _) = Call(workshop, "--stale");
        Assert.Equal(0, code);
        Assert.Equal("No card is on record: none has been printed yet, so none can be out of date.\n", text);
        Assert.False(File.Exists(workshop[Record]));
    }

    [Fact]
    public void What_a_card_has_no_room_for_can_change_without_making_it_stale()
    {
        using var workshop = new Workshop();
        const string file = "content/species/danio-rerio.md";
        workshop.Replace(file, "evidence: common practice\n",
            "cautions: [" + string.Join(", ", Enumerable.Range(1, 9).Select(Long)) + "]\nevidence: common practice\n");
        Assert.Contains("no room for", Call(workshop, "danio-rerio", "--size", "A7").Text, StringComparison.Ordinal);
        workshop.Replace(file, Long(9), Long(10));
        Assert.StartsWith("Every card", Call(workshop, "--stale").Text, StringComparison.Ordinal);
        workshop.Replace(file, Long(1), Long(11));
        Assert.Contains("the A7 card", Call(workshop, "--stale").Text, StringComparison.Ordinal);

        static string Long(int number) =>
            $"caution number {number} that goes on for a line and for a good half of another";
    }

    [Fact]
    public void Cards_of_an_arrival_show_price_and_count_and_are_stale_when_those_change()
    {
        using var workshop = new Workshop();
        const string file = "content/arrivals/2026-11-24-larkwater.yaml";
        workshop.Write(file,
            """
            supplier: Larkwater
            date: 2026-11-24
            batches:
              - { said: "Brachydanio rerio 30", entry: danio-rerio, count: 30, alive: 29,
                  provenance: farmed, price: 2.40 }
              - { said: "Betta sp. 2", count: 2 }
            """);
        var (code, text, errors) = Call(workshop, "--arrival", "2026-11-24-larkwater", "--today", "2026-11-25");
        Assert.True(code == 0, text + errors);
        Assert.Contains("1 card on 1 sheet", text, StringComparison.Ordinal);
        var sheet = File.ReadAllText(workshop["cards/tank-cards-a6.html"]);
        Assert.Contains(">2.40 per fish<", sheet, StringComparison.Ordinal);
        Assert.Contains(">29 counted<", sheet, StringComparison.Ordinal);
        Assert.Contains(">sold from 8 December 2026<", sheet, StringComparison.Ordinal);
        Assert.Contains(">From a fish farm<", sheet, StringComparison.Ordinal);
        Assert.Contains("size: A6, arrival: 2026-11-24-larkwater, mark:", File.ReadAllText(workshop[Record]),
            StringComparison.Ordinal);
        Assert.Contains("nothing to print", Call(workshop, "--stale").Text, StringComparison.Ordinal);
        workshop.Replace(file, "date: 2026-11-24", "date: 2026-11-25");
        Assert.Contains("danio-rerio: the A6 card of 2026-11-25", Call(workshop, "--stale", "--trial").Text,
            StringComparison.Ordinal);
        workshop.Replace(file, "date: 2026-11-25", "date: 2026-11-24");
        workshop.Replace(file, "price: 2.40", "price: 2.60");
        Assert.Contains("danio-rerio: the A6 card of 2026-11-25", Call(workshop, "--stale").Text,
            StringComparison.Ordinal);
        Assert.Contains(">2.60 per fish<", File.ReadAllText(workshop["cards/tank-cards-a6.html"]),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_printed_card_of_no_entry_is_told_CD904()
    {
        using var workshop = new Workshop();
        workshop.Write(Record, "danio-albolineatus:\n  - { size: A6, mark: KXT-MRC, printed: 2026-10-01 }\n");
        var (code, text, _) = Call(workshop, "--stale");
        Assert.Equal(0, code);
        Assert.Contains("content/printed.yaml(1,1): warning CD904: A paper of danio-albolineatus was printed", text,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("danio-rerio: { size: A6 }\n", "error SC20")]
    [InlineData("danio-rerio:\n  - { size: A5, mark: KXT-MRC, printed: 2026-10-01 }\n", "(2,13): error CD901: ")]
    [InlineData("danio-rerio:\n  - { size: A6, mark: KXT, printed: 2026-10-01 }\n", "(2,23): error SC206: ")]
    [InlineData("danio-rerio:\n  - { size: A6, mark: KXT-MRC, printed: 2026-02-30 }\n", "(2,41): error SC212: ")]
    [InlineData("danio-rerio: [\n", "error RD109: ")]
    public void A_mistake_in_the_record_is_told_at_its_place_and_the_record_stays(string record, string told)
    {
        using var workshop = new Workshop();
        workshop.Write(Record, record);
        var (code, text, _) = Call(workshop);
        Assert.Equal(1, code);
        Assert.Contains(told, text, StringComparison.Ordinal);
        Assert.Equal(record, File.ReadAllText(workshop[Record]));
        Assert.False(Directory.Exists(workshop["cards"]));
    }

    [Fact]
    public void As_json_it_tells_marks_and_what_had_no_room()
    {
        using var workshop = new Workshop();
        using var told = JsonDocument.Parse(Call(workshop, "--json", "--trial", "--size", "50x40mm").Text);
        var card = told.RootElement.GetProperty("cards")[0];
        Assert.Matches("^[A-Z]{3}-[A-Z]{3}$", card.GetProperty("mark").GetString());
        Assert.NotEqual(0, card.GetProperty("dropped").GetArrayLength());
        Assert.Equal("cards/tank-cards-50x40-mm.html", told.RootElement.GetProperty("documents")[0].GetString());
    }

    [Fact]
    public void A_pdf_is_made_with_the_browser_of_the_machine()
    {
        using var workshop = new Workshop();
        var (code, text, errors) = Call(workshop, "--pdf", "--size", "A7", "--paper", "Letter");
        Assert.True(code == 0, errors);
        Assert.Contains("cards/tank-cards-a7.pdf", text, StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(workshop["cards/tank-cards-a7.pdf"]);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(11 * 72, Math.Max(pdf.GetPage(1).Width, pdf.GetPage(1).Height), 1.0);
    }

    [Theory]
    [InlineData("no-such-fish")]
    [InlineData("--size A5")]
    [InlineData("--orientation sideways")]
    [InlineData("--paper A3")]
    [InlineData("--today tomorrow")]
    [InlineData("--arrival 2026-01-01-nobody")]
    [InlineData("--arrival 2026-01-01-nobody --stale")]
    [InlineData("--pdf --browser /nowhere/browser")]
    public void Wrong_use_returns_2_and_makes_nothing(string call)
    {
        using var workshop = new Workshop();
        var (code, _, errors) = Call(workshop, call.Split(' '));
        Assert.Equal(2, code);
        Assert.NotEqual("", errors.Trim());
        Assert.False(Directory.Exists(workshop["cards"]));
        Assert.False(File.Exists(workshop[Record]));
    }

    [Fact]
    public void Without_a_browser_the_message_says_what_to_do()
    {
        Assert.Null(InstalledBrowser.Find(["/nowhere/chromium"]));
        Assert.Contains("--browser", InstalledBrowser.None, StringComparison.Ordinal);
        Assert.Contains(InstalledBrowser.Places(), p => p.EndsWith("msedge.exe", StringComparison.Ordinal) ||
            p.EndsWith("chromium", StringComparison.Ordinal));
    }

    [Fact]
    public void A_browser_that_fails_is_told_and_nothing_goes_on_record()
    {
        using var workshop = new Workshop();
        var (code, _, errors) = Call(workshop, "--pdf", "--browser", "/bin/false");
        Assert.Equal(2, code);
        Assert.Contains("/bin/false", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(workshop[Record]));
    }

    private static (int Code, string Text, string Errors) Call(Workshop workshop, params string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        var start = new ProcessStartInfo("dotnet", ["exec", program, "cards", .. arguments, "--theme", "theme"])
        {
            WorkingDirectory = workshop.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text, errors.GetAwaiter().GetResult());
    }
}
