using CareSheets.Quantities;
using CareSheets.Water;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>Benson and Krause 1980/1984, against printed tables.</summary>
public sealed class OxygenSaturationTests
{
    // ISO 5814 / EN 25814 at one atmosphere, as printed in two instrument makers' manuals, 0 to 30 °C; the last 0 fills
    // the row.
    private const string Iso = """
        14.62 14.22 13.83 13.46 13.11 12.77 12.45 12.14
        11.84 11.56 11.29 11.03 10.78 10.54 10.31 10.08
        9.87 9.66 9.47 9.28 9.09 8.91 8.74 8.58
        8.42 8.26 8.11 7.97 7.83 7.69 7.56 0
        """;

    // Three decimals as printed in an exercise.
    private const string Exercise = """
        0 14.621
        8 11.843
        16 9.870
        24 8.418
        32 7.305
        40 6.413
        """;

    // Computed by other code with the pressure correction of 1984: atm, then 0, 10, 20, 25 and 30 °C.
    private const string Thin = """
        0.95 13.8860 10.7171 8.6274 7.8372 7.1646
        0.90 13.1512 10.1462 8.1623 7.4109 6.7703
        0.85 12.4162 9.5752 7.6972 6.9846 6.3760
        0.80 11.6812 9.0042 7.2320 6.5583 5.9817
        0.70 10.2110 7.8620 6.3016 5.7055 5.1930
        """;

    // The same in millimetres of mercury.
    private const string Mercury = """
        740 14.2341 10.9875 8.8477 8.0391 7.3513
        700 13.4606 10.3866 8.3581 7.5904 6.9363
        650 12.4936 9.6353 7.7461 7.0295 6.4175
        600 11.5265 8.8840 7.1341 6.4685 5.8987
        """;

    // Computed by other code: metres, atm, then 10, 20, 25 and 30 °C; last an instrument manual's older relation
    // at 10, 20 and 30 °C, good to 0.15 mg/L.
    private const string High = """
        0    1.000000 11.288 9.092 8.263 7.559 11.3 9.1 7.5
        300  0.964940 10.888 8.766 7.965 7.282 10.9 8.8 7.2
        600  0.930883 10.499 8.450 7.674 7.014 10.5 8.5 7.0
        900  0.897805 10.121 8.142 7.392 6.753 10.2 8.2 6.8
        1500 0.834503 9.398 7.553 6.852 6.254 9.5 7.7 6.3
        1800 0.804236 9.053 7.271 6.594 6.015 9.2 7.4 6.1
        """;

    private static readonly double[] Columns = [0, 10, 20, 25, 30];

    // 21 °C computes to 8.91501 and is printed 8.91.
    [Fact]
    public void The_printed_standard_is_met()
    {
        var row = Rows(Iso).SelectMany(r => r).ToArray();
        Assert.Equal(32, row.Length);
        for (var celsius = 0; celsius <= 30; celsius++)
            Assert.Equal(row[celsius], At(celsius, 1), 0.006);
    }

    [Fact]
    public void Three_printed_decimals_are_met() =>
        Assert.All(Rows(Exercise), row => Assert.Equal(row[1], At(row[0], 1), 0.0006));

    [Fact]
    public void Under_thin_air_other_code_agrees() => Assert.All(Rows(Thin), row =>
    {
        for (var i = 0; i < Columns.Length; i++)
            Assert.Equal(row[i + 1], At(Columns[i], row[0]), 1e-3);
    });

    [Fact]
    public void In_millimetres_of_mercury_it_agrees_too() => Assert.All(Rows(Mercury), row =>
    {
        var air = QuantityText.Parse($"{row[0]} mmHg", DimensionCatalogue.Pressure).Value.As<Pressure>().Min!.Value;
        for (var i = 0; i < Columns.Length; i++)
            Assert.Equal(row[i + 1], OxygenSaturation.At(Warm(Columns[i]), air).Value.InMilligramsPerLitre, 1e-3);
    });

    [Fact]
    public void High_places_have_less() => Assert.All(Rows(High), row =>
    {
        var air = StandardAtmosphere.At(Altitude.FromMetres(row[0]));
        Assert.Equal(row[1], air.InAtmospheres, 1e-6);
        for (var i = 0; i < 4; i++)
            Assert.Equal(row[i + 2], At(Columns[i + 1], air.InAtmospheres), 1e-3);
        Assert.Equal(row[6], At(10, air.InAtmospheres), 0.15);
        Assert.Equal(row[7], At(20, air.InAtmospheres), 0.16);
        Assert.Equal(row[8], At(30, air.InAtmospheres), 0.15);
    });

    // The equation in use before 2011 (Weiss 1970) gives 9.067 at 20 °C; a widely reprinted table gives 9.2.
    [Fact]
    public void Older_relations_are_not_used() => Assert.Equal(9.0924, At(20, 1), 5e-5);

    [Theory]
    [InlineData(-0.1, 1)]
    [InlineData(40.1, 1)]
    [InlineData(20, 0.49)]
    [InlineData(20, 1.11)]
    public void Beyond_its_range_the_formula_is_refused(double celsius, double air)
    {
        var refusal = OxygenSaturation.At(Warm(celsius), Pressure.FromAtmospheres(air)).Refusal!;
        Assert.Equal(RefusalReason.OutsideFormula, refusal.Reason);
        Assert.Equal(refusal.Of == DimensionCatalogue.Temperature ? 40 : 1.1 * 101.325, refusal.High!.Value, 1e-9);
    }

    private static double At(double celsius, double atmospheres) => OxygenSaturation
        .At(Warm(celsius), Pressure.FromAtmospheres(atmospheres)).Value.InMilligramsPerLitre;
}
