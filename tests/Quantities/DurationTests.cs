using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class DurationTests
{
    // UnitsNet 5.75.1, Duration: its Julian year has 365.25 days.
    [Fact]
    public void Days_and_weeks_agree_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 5000), value =>
        {
            Assert.Equal(
                UnitsNet.Duration.FromDays(value).JulianYears,
                Duration.FromDays(value).InYears,
                1e-9);
            Assert.Equal(
                UnitsNet.Duration.FromWeeks(value).JulianYears,
                DimensionCatalogue.Duration.Find("weeks")!.ToCanonical(value),
                1e-9);
        });

    // Twelve months to the calendar year.
    [Fact]
    public void Eighteen_months_are_a_year_and_a_half()
    {
        Assert.Equal(1.5, Duration.FromMonths(18).InYears);
        Assert.Equal(30, Duration.FromYears(2.5).InMonths, 1e-12);
    }
}
