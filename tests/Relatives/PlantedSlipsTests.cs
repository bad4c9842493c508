using CareSheets.Tests.Support;
using Xunit.Abstractions;

namespace CareSheets.Tests.Relatives;

/// <summary>
/// Slips planted into 5 % of the real collection's values of one figure: what share the program notices, by
/// relatives or by the schema's limits, and how often it calls a clean value wrong. The figures are
/// printed, for they are the record of how well this works; the least that is asked stands beside
/// each, and says where the aim of 90 % is not met.
/// </summary>
public sealed class PlantedSlipsTests(ITestOutputHelper output)
{
    private const int Seeds = 3;

    /// <summary>Kind, figure, least share found.</summary>
    public static TheoryData<string, string, double> Kinds() => new()
    {
        { "Fahrenheit typed as Celsius", "temperature", 0.9 },
        { "Celsius typed as Fahrenheit", "temperature", 0.9 },
        { "ppm typed as degrees", "hardness", 0.9 },
        { "degrees typed as ppm", "hardness", 0.9 },
        { "decimal lost", "ph", 0.9 },
        { "decimal lost", "adult.length", 0.9 },
        { "middle moved by 3 sd", "ph", 0.9 },
        { "centimetres typed as inches", "adult.length", 0.9 },
        { "inches typed as centimetres", "adult.length", 0.9 },
        { "standard for total length", "adult.length", 0 }, // a fifth is within any genus: nobody can tell
        { "middle moved by 3 sd", "temperature", 0.9 },
        { "two rows exchanged", "ph", 0.2 }, // most fishes' ranges fit most others
        { "two rows exchanged", "adult.length", 0.2 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Slips_are_noticed_and_clean_values_left_alone(string kind, string field, double least)
    {
        var slips = new PlantedSlips(RealContent.Collection, kind, field);
        for (var seed = 1; seed <= Seeds; seed++)
            slips.Run(seed);
        output.WriteLine(slips.ToString());
        Assert.True(slips.Planted >= 10);
        Assert.True(slips.ShareFound >= least, slips.ToString());
        Assert.True(slips.FalseAlarmsPerHundred <= 1, slips.ToString());
    }
}
