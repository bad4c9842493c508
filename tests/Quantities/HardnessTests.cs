using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

/// <remarks>
/// The table of hardness units from their definitions: °dH 10 mg CaO/L, °fH 10 mg CaCO₃/L, °e one
/// grain CaCO₃ per imperial gallon, gpg one grain per US gallon, grain 64.79891 mg, molar masses
/// CaCO₃ 100.0869 and CaO 56.0774 g/mol (from memory; of its cells, 17.848 and 17.118 mg/L were
/// seen in a published reference page). Six significant digits, so a relative tolerance of 1e-5.
/// </remarks>
public class HardnessTests
{
    private static readonly string[] Units =
        ["mg/L CaCO3", "mmol/L", "°dH", "°fH", "°e", "gpg"];

    private static readonly double[][] Table =
    [
        [1, 0.00999132, 0.0560287, 0.1, 0.0701569, 0.0584178],
        [100.087, 1, 5.60774, 10.0087, 7.02179, 5.84686],
        [17.848, 0.178325, 1, 1.7848, 1.25216, 1.04264],
        [10, 0.0999132, 0.560287, 1, 0.701569, 0.584178],
        [14.2538, 0.142414, 0.79862, 1.42538, 1, 0.832674],
        [17.1181, 0.171032, 0.959103, 1.71181, 1.20095, 1],
    ];

    public static TheoryData<string, string, double> Cells()
    {
        var cells = new TheoryData<string, string, double>();
        for (var from = 0; from < Units.Length; from++)
        {
            for (var to = 0; to < Units.Length; to++)
            {
                cells.Add(Units[from], Units[to], Table[from][to]);
            }
        }

        return cells;
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public void Every_cell_of_the_unit_table_is_met(string from, string to, double expected)
    {
        var source = DimensionCatalogue.GeneralHardness.Find(from)!;
        var target = DimensionCatalogue.GeneralHardness.Find(to)!;

        Assert.Equal(expected, target.FromCanonical(source.ToCanonical(1)), 1e-5 * expected);
    }

    [Fact]
    public void Eight_German_degrees_come_to_the_worked_example()
    {
        var hardness = GeneralHardness.FromGermanDegrees(8);

        Assert.Equal(142.784, hardness.InMilligramsPerLitre, 3);
        Assert.Equal(1.42660, hardness.InMillimoles, 5);
        Assert.Equal(14.278, hardness.InFrenchDegrees, 3);
        Assert.Equal(10.017, hardness.InClarkDegrees, 3);
        Assert.Equal(8.3411, hardness.InGrainsPerGallon, 4);
    }

    // The same constants to seven or eight digits, relative tolerance 1e-7.
    [Theory]
    [InlineData("°dH", 17.84799)]
    [InlineData("gpg", 17.118061)]
    [InlineData("°e", 14.253768)]
    public void One_degree_is_so_many_milligrams(string unit, double milligrams) =>
        Assert.Equal(
            milligrams,
            DimensionCatalogue.GeneralHardness.Find(unit)!.ToCanonical(1),
            3e-7 * milligrams);

    // 17.8, 17.1 and 14.3 are the rounded forms in common use: common practice, no source.
    [Theory]
    [InlineData("°dH", 17.8)]
    [InlineData("gpg", 17.1)]
    [InlineData("°e", 14.3)]
    public void The_rounded_forms_in_use_are_within_a_third_of_a_percent(
        string unit, double milligrams) =>
        Assert.Equal(
            milligrams,
            DimensionCatalogue.GeneralHardness.Find(unit)!.ToCanonical(1),
            0.0033 * milligrams);

    // A Ca²⁺ or Mg²⁺ ion stands for one CaCO₃, a bicarbonate ion for half of one: CaCO₃ gives two
    // charges. Half of 100.0869 g/mol (molar mass from memory) is 50.04345.
    [Fact]
    public void A_millimole_counts_ions_in_general_and_acid_capacity_in_carbonate_hardness()
    {
        Assert.Equal(100.0869, GeneralHardness.FromMillimoles(1).InMilligramsPerLitre, 1e-9);
        Assert.Equal(50.04345, CarbonateHardness.FromMillimoles(1).InMilligramsPerLitre, 1e-9);
        Assert.Equal(100.0869, Written("1 mmol/L", DimensionCatalogue.GeneralHardness), 1e-9);
        Assert.Equal(50.04345, Written("1 mmol/L", DimensionCatalogue.CarbonateHardness), 1e-9);
    }

    [Fact]
    public void A_milliequivalent_is_the_same_in_both()
    {
        Assert.Equal(50.04345, Written("1 meq/L", DimensionCatalogue.GeneralHardness), 1e-9);
        Assert.Equal(50.04345, Written("1 meq/L", DimensionCatalogue.CarbonateHardness), 1e-9);
    }

    [Fact]
    public void A_German_degree_is_the_same_in_both() =>
        Assert.Equal(
            GeneralHardness.FromGermanDegrees(5).Canonical,
            CarbonateHardness.FromGermanDegrees(5).Canonical);

    private static double Written(string text, Dimension dimension) =>
        QuantityText.Parse(text, dimension).Value.Low!.Value;
}
