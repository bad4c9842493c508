using System.Globalization;
using System.Security.Cryptography;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Publishing;

/// <summary>The same content gives the same bytes, wherever, whenever and in whatever order it is read.</summary>
public sealed class ReproducibleSiteTests
{
    [Fact]
    public void Two_runs_of_the_real_content_from_two_places_and_languages_give_the_same_bytes()
    {
        var again = RealSite.Make("de_DE.UTF-8", Path.GetTempPath());
        Assert.True(Digest(again).Count > 400);
        Assert.Equal(Digest(RealSite.Folder), Digest(again));
    }

    [Fact]
    public void A_culture_with_decimal_commas_changes_nothing()
    {
        using var workshop = new Workshop();
        workshop.RunSite().AssertClean();
        var before = Digest(workshop.Site);
        var usual = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            var outcome = workshop.RunSite().Outcome!;
            Assert.Equal(0, outcome.Written);
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = usual;
        }
        Assert.Equal(before, Digest(workshop.Site));
    }

    [Fact]
    public void The_order_in_which_files_were_made_changes_nothing()
    {
        using var one = new Workshop();
        using var other = new Workshop();
        foreach (var (workshop, reverse) in new[] { (one, false), (other, true) })
        {
            var entries = Directory.GetFiles(workshop["content/species"]).Order(StringComparer.Ordinal)
                .Select(path => (path, File.ReadAllText(path))).ToList();
            Directory.Delete(workshop["content/species"], recursive: true);
            Directory.CreateDirectory(workshop["content/species"]);
            foreach (var (path, text) in reverse ? Enumerable.Reverse(entries) : entries)
                File.WriteAllText(path, text);
            workshop.RunSite().AssertClean();
        }
        Assert.Equal(Digest(one.Site), Digest(other.Site));
    }

    [Fact]
    public void A_second_run_writes_nothing_and_keeps_every_time()
    {
        using var workshop = new Workshop();
        workshop.RunSite().AssertClean();
        var old = new DateTime(2021, 3, 4, 5, 6, 7, DateTimeKind.Utc);
        var files = Directory.GetFiles(workshop.Site, "*", SearchOption.AllDirectories);
        foreach (var file in files)
            File.SetLastWriteTimeUtc(file, old);

        var outcome = workshop.RunSite().Outcome!;

        Assert.Equal((0, files.Length, 0), (outcome.Written, outcome.Unchanged, outcome.Removed));
        Assert.All(files, file => Assert.Equal(old, File.GetLastWriteTimeUtc(file)));
    }

    [Fact]
    public void One_changed_entry_changes_the_pages_that_show_it_and_no_others()
    {
        using var workshop = new Workshop();
        workshop.RunSite().AssertClean();
        var before = Digest(workshop.Site);
        workshop.Replace("content/species/betta-splendens.md", "Two males kill one another.", "Keep males apart.");
        workshop.RunSite().AssertClean();
        Assert.Equal(
            ["papers/card-betta-splendens.html", "papers/sheet-betta-splendens.html", "species/betta-splendens.html"],
            Digest(workshop.Site).Except(before).Select(f => f.Key));
    }

    [Fact]
    public void One_bad_entry_leaves_the_published_site_untouched()
    {
        using var workshop = new Workshop();
        workshop.RunSite().AssertClean();
        var before = Digest(workshop.Site);
        workshop.Replace("content/species/betta-splendens.md", "lid: tight", "lid: shut");
        workshop.Replace("content/species/danio-rerio.md", "zebra danio", "striped danio");
        Assert.Null(workshop.RunSite().Outcome);
        Assert.Equal(before, Digest(workshop.Site));
    }

    private static List<KeyValuePair<string, string>> Digest(string folder) =>
    [
        .. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => KeyValuePair.Create(
                Path.GetRelativePath(folder, path), Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)))))
            .OrderBy(f => f.Key, StringComparer.Ordinal),
    ];
}
