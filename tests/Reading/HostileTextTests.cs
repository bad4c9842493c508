using CareSheets.Diagnostics;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Reading;

/// <summary>
/// Front matter that is too large or too odd to keep as a case file. Each gets its message; none
/// ends the process or takes long. A parser that loads trees would overflow the stack on the deep ones.
/// </summary>
public sealed class HostileTextTests
{
    private const string Signs = "[]{}:,-#&*!|>'\"%@`\n\t \0\u00e41";
    private const string End = "---\nProse.\n";
    private const string Entry = "content/species/danio-rerio.md";

    public static TheoryData<string, string> Texts() => new()
    {
        { "RD113", "---\norder: " + new string('[', 30_000) + "\n---\nProse.\n" },
        { "RD113", "---\norder: " + string.Concat(Enumerable.Repeat("{a: ", 20_000)) + "\n---\nProse.\n" },
        { "RD113", "---\n" + string.Concat(Enumerable.Range(0, 60).Select(i => new string(' ', i) + "a:\n")) + End },
        { "RD106", "---\norder: " + new string('x', 2 * 1024 * 1024) + "\n---\nProse.\n" },
        { "RD105", "---\norder: x\n" + string.Concat(Enumerable.Repeat("line\n", 50_000)) },
        { "SC202", "---\n" + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"a{i}: x\n")) + "---\nProse.\n" },
        { "RD110", "---\n" + string.Concat(Enumerable.Repeat("a: x\n", 20_000)) + "---\nProse.\n" },
        { "SC206", "---\nfamily: " + new string('a', 200_000) + "\n---\nProse.\n" },
        { "RD103", "---\nfamily: a\u0007b\n---\nProse.\n" },
        { "RD103", "---\nfamily: a\uFEFFb\n---\nProse.\n" },
        { "RD109", "---\nfamily: 'a\n---\nProse.\n" },
        { "RD109", "---\nfamily: @a\n---\nProse.\n" },
        { "RD109", "---\n: a\n  b: c\n d\n---\nProse.\n" },
        { "RD116", "---\n# only a remark\n---\nProse.\n" },
        { "SC201", "---\n<<: {a: b}\n---\nProse.\n" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void It_gets_its_message(string code, string text)
    {
        using var workshop = new Workshop();
        workshop.Write(Entry, text);
        var run = workshop.RunSite();
        Assert.Contains(
            run.Found, d => d.Code.Id == code && d.Span.File.EndsWith("danio-rerio.md", StringComparison.Ordinal));
        Assert.Null(run.Outcome);
        Assert.All(run.Printed.Split('\n'), line => Assert.True(line.Length < 700, line));
    }

    /// <summary>Whatever bytes a disk or an editor leaves behind: a message, and never an exception.</summary>
    [Fact]
    public void Random_damage_never_throws()
    {
        var good = File.ReadAllBytes(Repository.At("tests", "Support", "Toy", "species", "danio-rerio.md"));
        var random = new Random(20261125);
        using var workshop = new Workshop();
        for (var i = 0; i < 150; i++)
        {
            var bytes = good.ToArray();
            for (var hit = 0; hit < 1 + random.Next(6); hit++)
                bytes[random.Next(bytes.Length)] = (byte)Signs[random.Next(Signs.Length)];
            File.WriteAllBytes(workshop[Entry], bytes);
            var found = workshop.RunSite().Found;
            Assert.All(found, d => Assert.NotEqual("", d.Message));
        }
    }

    /// <summary>The message and the place are the same in both forms.</summary>
    [Fact]
    public void Json_says_what_the_text_says()
    {
        using var workshop = new Workshop();
        workshop.Replace(Entry, "18–27 °C", "27–18 °C");
        var found = workshop.RunSite().Found;
        using var json = System.Text.Json.JsonDocument.Parse(DiagnosticJson.Print(found));
        var one = json.RootElement.GetProperty("diagnostics")[0];
        Assert.Equal(1, json.RootElement.GetProperty("errors").GetInt32());
        Assert.Equal("QT305", one.GetProperty("code").GetString());
        Assert.Equal(15, one.GetProperty("line").GetInt32());
        Assert.Equal(16, one.GetProperty("column").GetInt32());
        Assert.Equal("care.temperature", one.GetProperty("path").GetString());
        Assert.Equal(found[0].Message, one.GetProperty("message").GetString());
        Assert.Equal(found[0].Hint, one.GetProperty("hint").GetString());
    }
}
