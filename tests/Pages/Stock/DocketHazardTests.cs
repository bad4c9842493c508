using CareSheets.Pages.Stock;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Pages.Stock;

/// <summary>
/// What the docket tells hands of lines that nobody knows: the hazards of the repository's own content, matched by
/// names, codes, drafts and the words of lists. Better one too many than one too few.
/// </summary>
public sealed class DocketHazardTests
{
    /// <summary>One docket for all, for the site of the whole content takes a while.</summary>
    private static readonly string[] Lines =
    [
        "said: \"Potamotrygon motoro 15cm\"",
        "said: \"POTAMOTRYGON;MOTORO;15cm\"",
        "said: \"Electrophorus electricus\"",
        "said: \"electric eel 40 cm\"",
        "said: \"teacup stingrays\"",
        "said: \"L999 mixed\"",
        "said: \"CW010\"",
        "said: \"kuhlis 6 cm\"",
        "said: \"nr 5\", perhaps: [hoplisoma-weitzmani]",
        "said: \"new cory, CW999\", entry: hoplisoma-weitzmani",
        "said: \"Serrasalmus sp.\"",
        "said: Tetraodon sp., size: 4 cm TL",
        "said: Tetraodon sp., size: 15 cm TL",
        "said: Tetraodon sp.",
        "said: \"Hemiodus spec. redtail\"",
        "said: \"mixed box, ask Tom\"",
        "said: \"L046 4cm\"",
        "said: \"mixed Ancistrus or Panaqolus\"",
    ];

    private static readonly Lazy<Docket> Docket = new(Read);

    [Theory]
    [InlineData("said: \"Potamotrygon motoro 15cm\"", "If it is Potamotrygon: Venomous tail sting!")]
    [InlineData("said: \"POTAMOTRYGON;MOTORO;15cm\"", "If it is Potamotrygon: Venomous tail sting!")]
    [InlineData("said: \"Electrophorus electricus\"", "If it is Electrophorus: Gives electric shocks!")]
    [InlineData("said: \"electric eel 40 cm\"", "If it is “electric eel”: Gives electric shocks!")]
    [InlineData("said: \"teacup stingrays\"", "If it is “stingrays”: Venomous tail sting!")]
    [InlineData("said: \"L999 mixed\"", "If it is L999: Spines catch in nets and skin")]
    [InlineData("said: \"CW010\"", "If it is CW010: Fin spines may be venomous")]
    [InlineData("said: \"kuhlis 6 cm\"", "If it is “kuhlis”: Spines catch in nets and skin")]
    [InlineData("said: \"nr 5\", perhaps: [hoplisoma-weitzmani]", "If it is Hoplisoma: Fin spines may be venomous")]
    [InlineData("said: \"new cory, CW999\", entry: hoplisoma-weitzmani", "Fin spines may be venomous")]
    [InlineData("said: \"Serrasalmus sp.\"", "If it is Serrasalmus: Bites.")]
    public void A_hazard_to_hands_is_told_of_what_a_line_may_mean(string line, string told) =>
        Assert.Contains(Cautions(line), c => c.Contains(told, StringComparison.Ordinal));

    [Fact]
    public void A_code_of_an_entry_brings_its_name_and_its_law()
    {
        var line = Line("said: \"L046 4cm\"");
        Assert.Contains(line.Cautions, c => c.Text.StartsWith("If it is Hypancistrus zebra", StringComparison.Ordinal));
        Assert.Contains(line.Alarm, a => a.Text.StartsWith("If it is Hypancistrus zebra.", StringComparison.Ordinal));
    }

    /// <summary>A puffer bites from 10 cm on, a cichlid from 25 cm: hazards.yaml.</summary>
    [Theory]
    [InlineData("said: Tetraodon sp., size: 4 cm TL", false)]
    [InlineData("said: Tetraodon sp., size: 15 cm TL", true)]
    [InlineData("said: Tetraodon sp.", true)]
    public void A_length_decides_where_it_is_known_and_counts_as_the_worst_where_not(string line, bool bites) =>
        Assert.Equal(bites, Cautions(line).Exists(c => c.Contains("Bites.", StringComparison.Ordinal)));

    [Theory]
    [InlineData("said: \"Hemiodus spec. redtail\"")]
    [InlineData("said: \"mixed box, ask Tom\"")]
    public void Where_no_name_tells_of_a_hazard_hands_stay_out_all_the_same(string line) =>
        Assert.Equal(
            "Nobody knows what it is, nor what it can do to hands. Use a container, never the bare hand.",
            Assert.Single(Cautions(line)));

    [Fact]
    public void Names_that_share_a_hazard_share_its_line() =>
        Assert.Contains(Cautions("said: \"mixed Ancistrus or Panaqolus\""), c =>
            c.StartsWith("If it is Ancistrus or Panaqolus: Spines catch", StringComparison.Ordinal));

    private static List<string> Cautions(string line) => [.. Line(line).Cautions.Select(c => c.Text)];

    private static DocketLine Line(string line)
    {
        var at = Lines.ToList().IndexOf(line);
        Assert.True(at >= 0, line);
        return Docket.Value.Lines.Single(l => l.Said.StartsWith($"Line {at + 1}: ", StringComparison.Ordinal));
    }

    private static Docket Read()
    {
        var batches = Lines.Select((line, i) => $"  - {{ line: {i + 1}, {line} }}\n");
        return ToySite.Read(change: w =>
        {
            Workshop.Copy(Repository.At("content"), w["content"]);
            var kin = File.ReadAllText(w["content/species/hoplisoma-adolfoi.md"]);
            w.Write("content/species/hoplisoma-weitzmani.md", kin
                .Replace("adolfoi", "weitzmani", StringComparison.Ordinal)
                .Replace("order: ", "draft: true\norder: ", StringComparison.Ordinal));
            w.Write("content/arrivals/2026-12-24-a.yaml",
                $"supplier: Larkwater Imports\ndate: 2026-12-24\nbatches:\n{string.Concat(batches)}");
        }).At<Docket>("papers/docket-2026-12-24-a.html");
    }
}
