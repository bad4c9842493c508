using CareSheets.Pages.Outlines;
using CareSheets.Tankmates;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Outlines;

/// <summary>The drawings of builds.csv keep to their own field, so that rulers beneath them are true.</summary>
public sealed class BuildTests
{
    [Fact]
    public void Each_drawing_reaches_from_the_snout_to_the_end_of_the_tail()
    {
        Assert.True(Build.All.Count() > 15);
        Assert.All(Build.All, build =>
        {
            var across = Figures(build.Path, 0);
            Assert.InRange(across.Min(), -0.3, 0.3);
            Assert.InRange(across.Max(), 98.5, 100);
        });
    }

    [Fact]
    public void Each_eye_lies_within_the_head() =>
        Assert.All(Build.All, build =>
        {
            var (top, bottom) = build.Path.Reach;
            Assert.InRange(build.Eye.X, 3, 20);
            Assert.InRange(build.Eye.Y, top + build.Eye.Radius, bottom - build.Eye.Radius);
        });

    [Fact]
    public void Each_shape_that_an_entry_may_state_has_a_drawing() =>
        Assert.All(
            Enum.GetValues<BodyShape>(),
            shape => Assert.NotEmpty(Build.Of("Nobody", EntryWord.Of(shape)).Path.Steps));

    [Theory]
    [InlineData("swordtail", "Xiphophorus hellerii", "Xiphophorus", "Poeciliidae", "fusiform")]
    [InlineData("livebearer", "Xiphophorus variatus", "Xiphophorus", "Poeciliidae", "fusiform")]
    [InlineData("angelfish", "Pterophyllum altum", "Pterophyllum", "Cichlidae", "deep")]
    [InlineData("carp", "Rasbora dusonensis", "Rasbora", "Nobody's family", "fusiform")]
    public void The_nearest_name_that_has_a_drawing_gives_it(string build, params string[] names) =>
        Assert.Equal(build, Build.Of(names).Name);

    [Fact]
    public void Each_species_here_is_drawn_after_its_kin() =>
        Assert.All(RealContent.Collection.Entries, entry =>
            Assert.NotNull(Build.Of(entry.ScientificName.Value.ToString(), entry.Genus, entry.Family.Value)));

    private static List<double> Figures(DrawnPath path, int odd) =>
    [
        .. path.Steps.Where(s => !char.IsAsciiLetter(s[0]))
            .Select(s => double.Parse(s, System.Globalization.CultureInfo.InvariantCulture))
            .Where((_, i) => i % 2 == odd),
    ];
}
