using System.Text;
using CareSheets.Diagnostics;
using CareSheets.Publishing;

namespace CareSheets.Tests.Publishing;

/// <summary>A write that is cut off, at any point, loses no site.</summary>
public sealed class CutOffWriteTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-cut-").FullName;
    private readonly DiagnosticBag _bag = new();

    private string Site => Path.Combine(_folder, "published");

    private string Next => Path.Combine(_folder, ".published.next");

    private string Last => Path.Combine(_folder, ".published.last");

    [Fact]
    public void Cut_off_while_filling_the_new_folder_the_old_site_stands_and_the_rest_is_cleared()
    {
        Write("old");
        Directory.CreateDirectory(Next);
        File.WriteAllText(Path.Combine(Next, "left-over.html"), "half");
        Assert.NotNull(Write("new"));
        Assert.Equal("new", Home());
        Assert.False(File.Exists(Path.Combine(Site, "left-over.html")));
        Assert.Equal([Site], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Cut_off_between_the_two_moves_the_old_site_is_put_back()
    {
        Write("old");
        Directory.Move(Site, Last);
        Assert.Null(Write("new", _ => [Error()]));
        Assert.Equal("old", Home());
        Assert.Equal([Site], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Cut_off_before_the_old_folder_was_deleted_the_new_site_stands()
    {
        Write("new");
        Directory.CreateDirectory(Last);
        File.WriteAllText(Path.Combine(Last, "index.html"), "old");
        Assert.Null(Write("newer", _ => [Error()]));
        Assert.Equal("new", Home());
        Assert.False(Directory.Exists(Last));
    }

    [Fact]
    public void A_first_move_that_fails_leaves_the_old_site()
    {
        Write("old");
        Assert.Null(Write("new", _ =>
        {
            Directory.CreateDirectory(Last); // as somebody else's run at the same time would
            return [];
        }));
        Assert.Equal("PB702", Assert.Single(_bag.Sorted()).Code.Id);
        Assert.Equal("old", Home());
    }

    [Fact]
    public void A_second_move_that_fails_puts_the_old_site_back_at_once()
    {
        Write("old");
        Assert.Null(Write("new", next =>
        {
            Directory.Delete(next, recursive: true); // as a cleaner of temporary files would
            return [];
        }));
        Assert.Equal("PB702", Assert.Single(_bag.Sorted()).Code.Id);
        Assert.True(Directory.Exists(Site), "There is no site until the next run.");
        Assert.Equal("old", Home());
    }

    [Fact]
    public void A_defect_in_the_check_leaves_the_old_site_and_no_rest()
    {
        Write("old");
        Assert.Throws<NotSupportedException>(() => Write("new", _ => throw new NotSupportedException()));
        Assert.Equal("old", Home());
        Assert.Equal([Site], Directory.GetFileSystemEntries(_folder));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Home() => File.ReadAllText(Path.Combine(Site, "index.html"));

    private WriteOutcome? Write(string home, Func<string, IEnumerable<Diagnostic>>? check = null) =>
        new SiteWriter(Site, _bag)
            .Write([new SiteFile("index.html", Encoding.UTF8.GetBytes(home))], check ?? (_ => []));

    private static Diagnostic Error() =>
        Diagnostic.Of(PublishingCodes.BrokenLink, SourceSpan.None, ("page", "a"), ("target", "b"));
}
