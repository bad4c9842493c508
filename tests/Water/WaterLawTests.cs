using CareSheets.Quantities;
using CareSheets.Water;
using CsCheck;
using static CareSheets.Tests.Water.Printed;

namespace CareSheets.Tests.Water;

/// <summary>What holds for every water, whatever its figures.</summary>
public sealed class WaterLawTests
{
    private static readonly Gen<double> Celsius = Gen.Double[0, 40];
    private static readonly Gen<double> Acid = Gen.Double[5, 9.5];
    private static readonly Gen<double> Degrees = Gen.Double[0.5, 20];

    [Fact]
    public void Warmer_and_more_alkaline_water_has_more_unionised_ammonia() =>
        Gen.Select(Acid, Celsius, Gen.Double[0.01, 1]).Sample((pH, celsius, more) =>
        {
            var share = Share(pH, celsius);
            Assert.InRange(share, 0, 1);
            Assert.True(Share(pH + more, celsius) > share);
            Assert.True(Share(pH, celsius + more) > share);
        });

    // Far below pKa the share grows tenfold for each unit of pH; far above it is all.
    [Fact]
    public void The_share_has_its_limits() => Gen.Select(Gen.Double[4, 5.5], Celsius, Gen.Double[0, 1])
        .Sample((pH, celsius, rise) =>
        {
            Assert.Equal(1, Share(pH + rise, celsius) / Share(pH, celsius) / Math.Pow(10, rise), 0.01);
            Assert.True(Share(14, celsius) > 0.999);
        });

    [Fact]
    public void Less_total_ammonia_is_allowed_the_more_of_it_is_unionised() =>
        Gen.Select(Acid, Celsius).Sample((pH, celsius) =>
        {
            var largest = UnionisedAmmonia.LargestTotal(AsN(0.02), PH(pH), Warm(celsius)).Value;
            Assert.Equal(
                0.02, UnionisedAmmonia.In(largest, PH(pH), Warm(celsius)).Value.InMilligramsOfNitrogen, 1e-12);
        });

    [Fact]
    public void Oxygen_falls_with_warmth_and_with_height() =>
        Gen.Select(Gen.Double[0, 39], Gen.Double[0, 4000], Gen.Double[0.1, 1]).Sample((celsius, metres, more) =>
        {
            var here = Oxygen(celsius, metres);
            Assert.True(Oxygen(celsius + more, metres) < here);
            Assert.True(Oxygen(celsius, metres + (100 * more)) < here);
            Assert.True(here > 0);
        });

    [Fact]
    public void At_one_atmosphere_the_correction_for_pressure_is_none() => Celsius.Sample(celsius => Assert.Equal(
        OxygenSaturation.At(Warm(celsius)).Value,
        OxygenSaturation.At(Warm(celsius), Pressure.FromAtmospheres(1)).Value));

    [Fact]
    public void Measuring_what_was_computed_gives_the_water_back() =>
        Gen.Select(Degrees, Gen.Double[0.2, 80], Celsius).Sample((degrees, gas, celsius) =>
        {
            var water = CarbonateWater.WithGas(
                KH(degrees), Concentration.FromMilligramsPerLitre(gas), Warm(celsius)).Value;
            Assert.Equal(gas, water.CarbonDioxide.InMilligramsPerLitre, 1e-9 * Math.Max(1, gas));
            var again = CarbonateWater.Of(water.Alkalinity, water.PH, Warm(celsius)).Value;
            Assert.Equal(gas, again.CarbonDioxide.InMilligramsPerLitre, 1e-8 * Math.Max(1, gas));
            Assert.Equal(water.TotalCarbon, again.TotalCarbon, 1e-9);
        });

    [Fact]
    public void pH_rises_as_CO2_leaves_and_no_further_than_in_the_air() =>
        Gen.Select(Degrees, Gen.Double[1, 80], Celsius).Sample((degrees, gas, celsius) =>
        {
            var closed = CarbonateWater.WithGas(
                KH(degrees), Concentration.FromMilligramsPerLitre(gas), Warm(celsius)).Value.PH;
            var less = CarbonateWater.WithGas(
                KH(degrees), Concentration.FromMilligramsPerLitre(gas / 2), Warm(celsius)).Value.PH;
            Assert.True(less > closed);
            if (gas > 2)
                Assert.True(CarbonateWater.Aired(KH(degrees), Warm(celsius)).Value.PH > closed);
        });

    [Fact]
    public void A_mixture_lies_between_its_waters_keeps_all_and_does_not_mind_the_order() =>
        Gen.Select(Water(), Water(), Gen.Double[0.01, 10]).Sample((one, other, volumes) =>
        {
            var mixed = CarbonateWater.Mix(one, 1, other, volumes).Value;
            var turned = CarbonateWater.Mix(other, volumes, one, 1).Value;
            Assert.Equal(mixed.PH.InPH, turned.PH.InPH, 1e-9);
            Assert.Equal(
                (one.TotalCarbon + (other.TotalCarbon * volumes)) / (1 + volumes), mixed.TotalCarbon,
                1e-9 * mixed.TotalCarbon + 1e-12);
            double[] ends = [one.Equivalents, other.Equivalents];
            Assert.InRange(mixed.Equivalents, ends.Min() - 1e-15, ends.Max() + 1e-15);
        });

    [Fact]
    public void A_water_mixed_with_itself_is_itself() =>
        Gen.Select(Water(), Gen.Double[0.01, 10]).Sample((water, volumes) =>
            Assert.Equal(water.PH.InPH, CarbonateWater.Mix(water, 1, water, volumes).Value.PH.InPH, 1e-6));

    [Fact]
    public void Mixing_goes_on_from_one_water_to_the_other() => Gen.Select(Water(), Water()).Sample((one, other) =>
    {
        Assert.Equal(one.PH.InPH, CarbonateWater.Mix(one, 1, other, 0).Value.PH.InPH, 1e-6);
        Assert.Equal(other.PH.InPH, CarbonateWater.Mix(one, 1, other, 1e9).Value.PH.InPH, 1e-3);
    });

    [Fact]
    public void A_blend_meets_every_target_between_its_waters() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 500], Gen.Double[0, 1]).Sample((one, other, share) =>
        {
            if (Math.Abs(one - other) < 1e-3)
                return;
            var (a, b) = (Milligrams(one), Milligrams(other));
            var target = Blend.Of(a, b, CareSheets.Quantities.Share.FromParts(share)).Value;
            var found = Blend.For(a, b, target);
            Assert.Equal(share, found.Value.OfFirst.InParts, 1e-6);
        });

    [Fact]
    public void Changes_come_nearer_each_time_and_never_beyond() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[1, 99], Gen.Int[0, 30])
            .Sample((tank, fresh, percent, times) =>
            {
                double After(int n) => WaterChange.After(
                    Milligrams(tank), Milligrams(fresh), CareSheets.Quantities.Share.FromPercent(percent), n)
                    .Value.InMilligramsPerLitre;
                Assert.True(Math.Abs(After(times + 1) - fresh) <= Math.Abs(After(times) - fresh) + 1e-12);
                Assert.InRange(After(times), Math.Min(tank, fresh) - 1e-9, Math.Max(tank, fresh) + 1e-9);
            });

    private static Gen<CarbonateWater> Water() =>
        Gen.Select(Degrees, Gen.Double[5.5, 8.5], Celsius, (degrees, pH, celsius) =>
            CarbonateWater.Of(KH(degrees), PH(pH), Warm(celsius)).Value);

    private static GeneralHardness Milligrams(double figure) => GeneralHardness.FromMilligramsPerLitre(figure);

    private static double Share(double pH, double celsius) =>
        UnionisedAmmonia.ShareAt(PH(pH), Warm(celsius)).Value.InParts;

    private static double Oxygen(double celsius, double metres) => OxygenSaturation
        .At(Warm(celsius), StandardAtmosphere.At(Altitude.FromMetres(metres))).Value.InMilligramsPerLitre;
}
