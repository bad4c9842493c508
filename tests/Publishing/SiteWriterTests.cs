using System.Text;
using CareSheets.Diagnostics;
using CareSheets.Publishing;

namespace CareSheets.Tests.Publishing;

/// <summary>A new site takes the old one's place as a whole or not at all.</summary>
public sealed class SiteWriterTests : IDisposable
{
    private static readonly DateTime Old = new(2020, 2, 2, 2, 2, 2, DateTimeKind.Utc);
    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-writer-").FullName;
    private readonly DiagnosticBag _bag = new();

    private string Site => Path.Combine(_folder, "published");

    [Fact]
    public void A_first_site_is_written_with_its_mark()
    {
        Assert.Equal(new WriteOutcome(3, 0, 0), Write(("index.html", "home"), ("species/a.html", "a")));
        Assert.Equal([".caresheets", "index.html", "species/a.html"], Files());
        Assert.Equal("a", Read("species/a.html"));
        Assert.Empty(_bag.Sorted());
    }

    [Fact]
    public void Files_that_did_not_change_keep_their_time_and_changed_ones_do_not()
    {
        Write(("index.html", "home"), ("a.html", "a"), ("b.html", "b"));
        Age();
        Assert.Equal(new WriteOutcome(2, 2, 1), Write(("index.html", "home"), ("a.html", "A"), ("new.html", "n")));
        Assert.Equal(Old, File.GetLastWriteTimeUtc(Path.Combine(Site, "index.html")));
        Assert.Equal(Old, File.GetLastWriteTimeUtc(Path.Combine(Site, ".caresheets")));
        Assert.True(File.GetLastWriteTimeUtc(Path.Combine(Site, "a.html")) > Old);
        Assert.Equal([".caresheets", "a.html", "index.html", "new.html"], Files());
        Assert.Equal("A", Read("a.html"));
    }

    [Fact]
    public void A_check_that_finds_an_error_leaves_the_old_site_byte_for_byte()
    {
        Write(("index.html", "home"), ("a.html", "a"));
        Age();
        var before = State();
        Assert.Null(Write([("index.html", "new"), ("b.html", "b")], _ => [Error()]));
        Assert.Equal(before, State());
        Assert.Equal("PB703", Assert.Single(_bag.Sorted()).Code.Id);
        Assert.Equal(["published"], Beside());
    }

    [Fact]
    public void A_check_that_finds_a_warning_lets_the_site_through_and_is_told()
    {
        var warning = Diagnostic.Of(LinkCodes.HtmlInProse, SourceSpan.None);
        Assert.NotNull(Write([("index.html", "new")], _ => [warning]));
        Assert.Equal([warning], _bag.Sorted());
    }

    [Fact]
    public void The_check_sees_the_new_site_while_the_old_one_stands()
    {
        Write(("index.html", "old"));
        Write([("index.html", "new")], folder =>
        {
            Assert.Equal("new", File.ReadAllText(Path.Combine(folder, "index.html")));
            Assert.Equal("old", Read("index.html"));
            return [];
        });
        Assert.Equal("new", Read("index.html"));
        Assert.Equal(["published"], Beside());
    }

    [Fact]
    public void A_folder_with_files_of_others_is_refused_and_left_alone()
    {
        Directory.CreateDirectory(Site);
        File.WriteAllText(Path.Combine(Site, "holiday.txt"), "mine");
        Assert.Null(Write(("index.html", "home")));
        Assert.Equal("PB701", Assert.Single(_bag.Sorted()).Code.Id);
        Assert.Equal(["holiday.txt"], Files());
    }

    [Fact]
    public void A_file_in_its_place_is_refused_and_left_alone()
    {
        File.WriteAllText(Site, "mine");
        Assert.Null(Write(("index.html", "home")));
        Assert.Equal("PB701", Assert.Single(_bag.Sorted()).Code.Id);
        Assert.Equal("mine", File.ReadAllText(Site));
    }

    [Fact]
    public void An_empty_folder_is_taken()
    {
        Directory.CreateDirectory(Site);
        Assert.NotNull(Write(("index.html", "home")));
    }

    [Fact]
    public void A_folder_under_a_file_cannot_be_written_and_says_why()
    {
        File.WriteAllText(Path.Combine(_folder, "file"), "");
        var writer = new SiteWriter(Path.Combine(_folder, "file", "site"), _bag);
        Assert.Null(writer.Write([NewFile("index.html", "x")], _ => []));
        Assert.Equal("PB702", Assert.Single(_bag.Sorted()).Code.Id);
    }

    [Fact]
    public void A_slash_behind_the_folder_makes_no_difference()
    {
        Assert.NotNull(new SiteWriter(Site + "/", _bag).Write([NewFile("index.html", "x")], _ => []));
        Assert.Equal(["published"], Beside());
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private WriteOutcome? Write(params (string Address, string Text)[] files) => Write(files, _ => []);

    private WriteOutcome? Write((string Address, string Text)[] files, Func<string, IEnumerable<Diagnostic>> check) =>
        new SiteWriter(Site, _bag).Write([.. files.Select(f => NewFile(f.Address, f.Text))], check);

    private static SiteFile NewFile(string address, string text) => new(address, Encoding.UTF8.GetBytes(text));

    private static Diagnostic Error() =>
        Diagnostic.Of(PublishingCodes.BrokenLink, SourceSpan.None, ("page", "a"), ("target", "b"));

    private string Read(string address) => File.ReadAllText(Path.Combine(Site, address));

    private IEnumerable<string> Beside() =>
        Directory.EnumerateFileSystemEntries(_folder).Select(p => Path.GetFileName(p));

    private IEnumerable<string> Files() => Directory.GetFiles(Site, "*", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(Site, p)).Order(StringComparer.Ordinal);

    private List<(string, string, DateTime)> State() =>
        [.. Files().Select(f => (f, Read(f), File.GetLastWriteTimeUtc(Path.Combine(Site, f))))];

    private void Age()
    {
        foreach (var file in Files())
            File.SetLastWriteTimeUtc(Path.Combine(Site, file), Old);
    }
}
