using System.Diagnostics;
using CareSheets.Pages.Stock;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Stock;

/// <summary>
/// The feed against atom.rnc, the rules of RFC 4287 as a RELAX NG schema, by the validator jing, which
/// tests/run installs. Feeds with one mistake each show that the schema refuses it.
/// </summary>
public sealed class AtomSchemaTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-").FullName;

    private static string Published => File.ReadAllText(Path.Combine(RealSite.Folder, "new-arrivals.atom"));

    [Fact]
    public void Feeds_of_the_program_are_valid_with_arrivals_without_and_with_hostile_text()
    {
        var hostile = ToySite.Read(
            change: w => w.Overlay(Repository.At("tests", "Cases", "110-arrivals", "hostile-text")));
        var said = Validate(Published, ArrivalFeed.Make(ToySite.Read().Site).Text, ArrivalFeed.Make(hostile.Site).Text);
        Assert.Equal(["", "", ""], said);
    }

    /// <param name="from">In the feed as it is published.</param>
    /// <param name="to">The mistake, put in its place once.</param>
    /// <param name="message">A part of what jing says of it.</param>
    [Theory]
    [InlineData("<id>https://copperbeck.example/new-arrivals.atom</id>", "", "\"id\"")] // 4.1.1: no identifier
    [InlineData("<title>New", "<title>Old</title><title>New", "\"title\" not allowed")] // 4.1.1: two titles
    [InlineData("<name>Copperbeck Fishroom</name>", "", "\"name\"")] // 3.2: a person without a name
    [InlineData("<updated>2026-11-24T00:00:00Z", "<updated>2026-11-24", "\"updated\" invalid")] // 3.3: no time
    [InlineData("<updated>2026-11-24T00:00:00Z", "<updated>2026-11-24T00:00:00", "\"updated\" invalid")] // 3.3: no zone
    [InlineData("<updated>2026-11-24T00", "<updated>2026-13-24T00", "\"updated\" invalid")] // 3.3: no such month
    [InlineData("<id>tag:copperbeck.example,2026-11-24:", "<id>", "\"id\" invalid")] // 4.2.6: relative
    [InlineData("<link rel=\"self\"", "<link rel=\"self\" /><link rel=\"self\"", "\"href\"")] // 4.2.7.1: leads nowhere
    [InlineData("type=\"application/atom+xml\"", "type=\"atom\"", "\"type\"")] // 4.2.7.3: no media type
    [InlineData("<content type=\"html\">", "<content type=\"html\"><b/>", "\"b\"")] // 3.1.1.2: html not escaped
    [InlineData("<content type=\"html\">", "<content type=\"text/\">", "\"type\"")] // 4.1.3.1: no such type
    [InlineData("<entry>", "<entry><price>2</price>", "\"price\"")] // 4.1.2: no such element
    [InlineData("<author>",
        "<entry><id>a:1</id><title>x</title><updated>2026-11-24T00:00:00Z</updated></entry><author>",
        "\"entry\" incomplete")] // 4.1.2: nothing to read and nowhere to go
    public void A_feed_with_a_mistake_is_refused(string from, string to, string message)
    {
        var at = Published.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, from);
        var said = Assert.Single(Validate(Published[..at] + to + Published[(at + from.Length)..]));
        Assert.Contains(message, said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_author_each_entry_needs_its_own()
    {
        const string author = "<author>\n    <name>Copperbeck Fishroom</name>\n  </author>";
        var none = Published.Replace(author, "", StringComparison.Ordinal);
        var each = none.Replace("<entry>", "<entry>" + author, StringComparison.Ordinal);
        var said = Validate(none, each);
        Assert.Contains("author", said[0], StringComparison.Ordinal);
        Assert.Equal("", said[1]);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>What jing says of each feed; nothing where it is valid.</summary>
    private List<string> Validate(params string[] feeds)
    {
        var paths = feeds.Select((_, i) => Path.Combine(_folder, $"feed-{i}.atom")).ToList();
        foreach (var (path, feed) in paths.Zip(feeds))
            File.WriteAllText(path, feed);
        var start = new ProcessStartInfo("jing",
            ["-c", Repository.At("tests", "Pages", "Stock", "atom.rnc"), .. paths])
        { RedirectStandardOutput = true };
        using var jing = Process.Start(start)!;
        var lines = jing.StandardOutput.ReadToEnd().Split('\n');
        jing.WaitForExit();
        Assert.True(jing.ExitCode is 0 or 1, string.Join('\n', lines)); // anything else is no verdict
        var said = paths
            .Select(p => string.Join('\n', lines.Where(l => l.StartsWith(p, StringComparison.Ordinal)))).ToList();
        Assert.Equal(jing.ExitCode == 0, said.All(s => s.Length == 0)); // a mistake in the schema is told elsewhere
        return said;
    }
}
