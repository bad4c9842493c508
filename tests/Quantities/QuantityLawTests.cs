using CareSheets.Quantities;
using CareSheets.Tests.Quantities.Laws;

namespace CareSheets.Tests.Quantities;

public class QuantityLawTests
{
    [Fact]
    public void A_temperature_is_a_place_on_a_scale() =>
        PointLaws.Hold<Temperature, TemperatureDifference>(-50, 150);

    [Fact]
    public void An_acidity_is_a_place_on_a_scale() =>
        PointLaws.Hold<Acidity, AcidityDifference>(0, 14);

    [Fact]
    public void A_temperature_difference_is_an_amount() =>
        AmountLaws.Hold<TemperatureDifference>(100);

    [Fact]
    public void An_acidity_difference_is_an_amount() => AmountLaws.Hold<AcidityDifference>(14);

    [Fact]
    public void General_hardness_is_an_amount() => AmountLaws.Hold<GeneralHardness>(1000);

    [Fact]
    public void Carbonate_hardness_is_an_amount() => AmountLaws.Hold<CarbonateHardness>(1000);

    [Fact]
    public void A_length_is_an_amount() => AmountLaws.Hold<Length>(500);

    [Fact]
    public void A_volume_is_an_amount() => AmountLaws.Hold<Volume>(10_000);

    [Fact]
    public void Conductivity_is_an_amount() => AmountLaws.Hold<Conductivity>(60_000);

    [Fact]
    public void Salinity_is_an_amount() => AmountLaws.Hold<Salinity>(100);

    [Fact]
    public void A_life_span_is_an_amount() => AmountLaws.Hold<Duration>(150);

    [Fact]
    public void A_concentration_is_an_amount() => AmountLaws.Hold<Concentration>(1000);

    [Fact]
    public void Ammonia_is_an_amount() => AmountLaws.Hold<Ammonia>(1000);

    [Fact]
    public void A_pressure_is_an_amount() => AmountLaws.Hold<Pressure>(200);

    [Fact]
    public void A_time_is_an_amount() => AmountLaws.Hold<Elapsed>(1000);

    [Fact]
    public void A_share_is_an_amount() => AmountLaws.Hold<Share>(100);

    [Fact]
    public void Differences_may_be_negative()
    {
        var cooler = Temperature.FromCelsius(20) - Temperature.FromCelsius(24);

        Assert.Equal(-4, cooler.InKelvins);
        Assert.Equal(Temperature.FromCelsius(16), Temperature.FromCelsius(20) + cooler);
        Assert.Equal(-1.5, (Acidity.FromPH(6) - Acidity.FromPH(7.5)).InPH);
    }

    [Fact]
    public void Taking_more_than_there_is_throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Volume.FromLitres(10) - Volume.FromLitres(11));
}
