using CareSheets.Arrivals;
using CareSheets.Commands;
using CareSheets.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.PackingLists;

/// <summary>A list read again into an arrival that people have worked on: nothing that they wrote is lost.</summary>
public sealed class AgainTests
{
    private const string List =
        "Latin name;Size;Qty;Price\nDanio rerio;3-4 cm;50;0,40\nDannio reiro;3 cm;10;0,40\nBetta splendens;;6 pr;3\n";

    private const string File = "content/arrivals/2026-11-24-oldmere.yaml";

    private const string Hand = "alive: 48\n    tank: A1\n    system: Soft water\n    price: 2.40\n    days: 21\n" +
        "    water: 4 L\n    losses: [{ date: 2026-11-25, count: 2 }]\n    cause: \"Jumped: all of them\"\n" +
        "    gone: 2026-12-24\n    ";

    [Fact]
    public void What_people_wrote_of_a_line_stays_and_is_told()
    {
        using var workshop = Worked(out var before);
        var receipt = Receive(workshop, List, "3=danio-rerio");
        var (was, now) = (before.Batches, Arrival(workshop).Batches);
        Assert.Equal(["danio-rerio", "danio-rerio", "betta-splendens"], now.Select(b => b.Entry?.Value));
        Assert.Equal(NameTaken.Answered, now[1].Taken);
        Assert.Equal(Written(was[0]), Written(now[0]));
        Assert.Equal((12, "pairs", 0), (now[2].Count!.Value, now[2].Sex, now[2].Unclear.Count));
        var told = receipt.List.Lines.Select(receipt.Carried.Told).ToList();
        Assert.Equal("alive, price, tank, system, days, water, losses, cause, gone", told[0]);
        Assert.Equal("", told[1]);
        Assert.Equal("no unclear (read as [\"6 pr: 6 pairs, or 6 fish\"]), count", told[2]);
    }

    [Fact]
    public void What_people_wrote_of_the_whole_arrival_stays()
    {
        using var workshop = Worked(out var before);
        Receive(workshop, List);
        var now = Arrival(workshop);
        Assert.Equal((before.Packed?.Value, before.Opened?.Value), (now.Packed?.Value, now.Opened?.Value));
        Assert.Equal(new DateTime(2026, 11, 23, 16, 0, 0), now.Packed!.Value);
        Assert.Equal(2, now.Bags.Count);
        Assert.All(before.Bags.Zip(now.Bags), pair => Assert.Equal(Measured(pair.First), Measured(pair.Second)));
        Assert.Equal(["Soft water", "W5"], now.Bags.Select(b => (b.System ?? b.Tank)!.Value));
    }

    private static object Measured(MeasuredBag bag) =>
        (bag.System?.Value, bag.Tank?.Value, bag.Hours, bag.Temperature, bag.Acidity, bag.Ammonia);

    [Fact]
    public void An_entry_by_hand_stays_until_another_is_answered()
    {
        using var workshop = Worked(out _);
        workshop.Replace(File, "    perhaps: [danio-rerio]", "    entry: danio-margaritatus\n    taken: by hand");
        Receive(workshop, List);
        Assert.Equal("danio-margaritatus", Arrival(workshop).Batches[1].Entry?.Value);
        Receive(workshop, List, "3=danio-rerio");
        Assert.Equal("danio-rerio", Arrival(workshop).Batches[1].Entry?.Value);
    }

    [Fact]
    public void Lines_that_have_moved_keep_theirs_and_those_that_went_are_told()
    {
        using var workshop = Worked(out _);
        var receipt = Receive(workshop, List.Replace("Danio rerio;", "Rasbora nova;1 cm;5;1\nDanio rerio;")
            .Replace("Betta splendens;;6 pr;3\n", ""));
        var moved = Arrival(workshop).Batches[1];
        Assert.Equal((3, 48, "A1"), (moved.Line!.Value, moved.Alive!.Value, moved.Tank));
        Assert.Equal("Betta splendens;;6 pr;3", Assert.Single(receipt.Carried.Gone).Said.Value);
    }

    [Theory]
    [InlineData("line: 9\n    said: \"10 Boraras as gift\"\n    alive: 10\n    tank: A5")]
    [InlineData("said: \"10 Boraras as gift\"\n    count: 10")]
    [InlineData("line: 9\n    said: \"Rasbora nova\"\n    entry: danio-rerio\n    taken: by hand")]
    [InlineData("line: 9\n    said: \"Rasbora nova\"\n    entry: danio-rerio\n    taken: exact\n    tank: A5")]
    public void A_batch_that_people_added_stays_although_the_list_has_no_such_line(string batch)
    {
        using var workshop = Worked(out _);
        workshop.Replace(File, "  - line: 4", $"  - {batch}\n  - line: 4");
        for (var time = 1; time <= 2; time++)
        {
            var receipt = Receive(workshop, List);
            Assert.Empty(receipt.Carried.Gone);
            Assert.Single(receipt.Carried.Kept);
            Assert.Equal(4, Arrival(workshop).Batches.Count);
            Assert.Contains(batch, System.IO.File.ReadAllText(workshop[File]).Replace("  # kept", "# kept"));
        }
    }

    [Fact]
    public void A_line_that_was_taken_for_no_fish_becomes_one_by_an_answer_or_by_hand()
    {
        using var workshop = Worked(out _);
        var list = List + "Thank you for this;;;\n";
        var skipped = Assert.Single(Receive(workshop, list).List.Skipped);
        Assert.Equal(5, skipped.Line);
        workshop.Replace(File, "# Line 5", "  - line: 5\n    said: \"Thank you for this;;;\"\n" +
            "    entry: danio-rerio\n    taken: by hand\n    alive: 7\n# Line 5");
        Receive(workshop, list);
        var batch = Arrival(workshop).Batches[3];
        Assert.Equal((5, "danio-rerio", 7), (batch.Line, batch.Entry?.Value, batch.Alive?.Value));
        Assert.DoesNotContain("# Line 5", System.IO.File.ReadAllText(workshop[File]));
        Assert.Equal("betta-splendens", Receive(workshop, list, "5=betta-splendens").List.Lines[3].Entry);
    }

    [Fact]
    public void Each_time_what_was_there_is_kept_under_a_number_of_its_own()
    {
        using var workshop = Worked(out _);
        var first = System.IO.File.ReadAllText(workshop[File]);
        Assert.Equal([".2026-11-24-oldmere.before-1.yaml"], Receive(workshop, List).Backups.Select(Path.GetFileName));
        Assert.Equal(
            [".2026-11-24-oldmere.before-2.yaml", ".2026-11-24-oldmere.before-1.csv"],
            Receive(workshop, List + "Danio rerio;;5;1\n").Backups.Select(Path.GetFileName));
        Assert.Equal(first, System.IO.File.ReadAllText(workshop["content/arrivals/.2026-11-24-oldmere.before-1.yaml"]));
        Assert.Equal(List, System.IO.File.ReadAllText(workshop["content/arrivals/.2026-11-24-oldmere.before-1.csv"]));
    }

    /// <summary>A list received, and then worked on by hand.</summary>
    private static Workshop Worked(out Arrival arrival)
    {
        var workshop = new Workshop();
        workshop.Replace("content/store.yaml", "paper: A4", "paper: A4\nsystems: [{ name: Soft water, ph: 6.2 }]");
        Receive(workshop, List, again: false);
        workshop.Replace(File, "batches:", "packed: 2026-11-23 16:00\nopened: 2026-11-24 18:00\n" +
            "bags: [{ system: Soft water, hours: 26.5, temperature: 72 °F, ph: 6.4, ammonia: 4 mg/L as N }, " +
            "{ tank: W5, ph: 6.8 }]\nbatches:");
        workshop.Replace(File, "    size: \"3–4 cm TL\"", "    " + Hand + "size: 3-4cm TL");
        workshop.Replace(File, "    unclear: [\"6 pr: 6 pairs, or 6 fish\"]", "    count: 12");
        arrival = Arrival(workshop);
        return workshop;
    }

    private static string Written(Batch batch) => string.Join("\n",
        batch.Alive?.Value, batch.Tank, batch.System?.Value, batch.Price, batch.Days, batch.Water?.Text,
        batch.Size?.Text, batch.Cause, batch.Gone?.Value, batch.Note,
        string.Join(", ", batch.Losses.Select(l => (l.Date.Value, l.Count.Value))));

    private static Arrival Arrival(Workshop workshop)
    {
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        var collection = bench.ReadCollection();
        Assert.False(bench.Bag.HasErrors, ToySite.Told(bench.Bag));
        return Assert.Single(collection!.Arrivals.Arrivals);
    }

    private static Receipt Receive(Workshop workshop, string list, string? answer = null, bool again = true)
    {
        workshop.Write("list.csv", list);
        var settings = new PackingListSettings
        {
            Content = workshop["content"],
            File = workshop["list.csv"],
            SupplierName = "Oldmere",
            DayText = "2026-11-24",
            Answers = answer is null ? [] : [answer],
            Again = again,
        };
        var bench = new Workbench(settings);
        var receipt = PackingListCommand.Receive(bench, settings);
        Assert.True(receipt is not null, ToySite.Told(bench.Bag));
        return receipt;
    }
}
