using CareSheets.Commands;
using CareSheets.Relatives;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Relatives;

/// <summary>An odd value that another figure of the entry makes odd: both are named.</summary>
public sealed class BesideTests
{
    private const string Path = "content/species/hoplisoma-panda.md";

    /// <summary>A tenfold volume foretells a larger fish; without it the length fits its genus.</summary>
    [Fact]
    public void A_wrong_volume_is_named_beside_the_right_length()
    {
        var odd = Odd("volume: 75 L", "volume: 750 L");
        Assert.Equal("adult.length", odd.Figure.Field);
        Assert.Equal("tank.volume", odd.Beside?.Figure.Field);
        Assert.Equal("750 L", odd.Beside?.Stated.Value.Text);
    }

    [Theory]
    [InlineData("length: 5 cm TL", "length: 50 cm TL")]
    [InlineData("ph: 6.0–7.5", "ph: 8.0–9.0")]
    [InlineData("temperature: 20–25 °C", "temperature: 28–32 °C")]
    public void A_value_that_is_odd_by_itself_stands_alone(string from, string to) => Assert.Null(Odd(from, to).Beside);

    private static Outlier Odd(string from, string to)
    {
        using var workshop = new Workshop();
        Directory.Delete(workshop["content"], recursive: true);
        Workshop.Copy(Repository.At("content"), workshop["content"]);
        workshop.Replace(Path, from, to);
        var bench = new Workbench(new ContentSettings { Content = workshop["content"] });
        var engine = RelativesEngine.Ask(bench.ReadCollection()!);
        return engine.Outliers.Single(o => o.Entry.Name == "hoplisoma-panda" && o.Accepted is null);
    }
}
