using CareSheets.Quantities;

namespace CareSheets.Tests.Quantities;

public class SizeTests
{
    // 1 in = 25.4 mm exactly (16 CFR 500.19; NIST SP 811, Appendix B, from memory); 1 ft = 12 in.
    [Fact]
    public void Three_inches_are_76_2_millimetres()
    {
        Assert.Equal(76.2, Length.FromInches(3).InMillimetres, 1e-12);
        Assert.Equal(7.62, Length.FromMillimetres(76.2).InCentimetres, 1e-12);
        Assert.Equal(30.48, Parsed("1 ft", DimensionCatalogue.Length), 1e-12);
    }

    // 1 US gal = 231 in³ = 3.785411784 L exactly (NIST SP 811, Appendix B, from memory);
    // 16 CFR 500.19 prints 3.785 41 L. The others are multiples to five decimals.
    [Theory]
    [InlineData(1, 3.78541)]
    [InlineData(10, 37.85412)]
    [InlineData(20, 75.70824)]
    [InlineData(29, 109.77694)]
    [InlineData(55, 208.19765)]
    public void US_gallons_are_so_many_litres(double gallons, double litres)
    {
        Assert.Equal(litres, Volume.FromUSGallons(gallons).InLitres, 5);
        Assert.Equal(gallons, Volume.FromLitres(litres).InUSGallons, 5);
    }

    // 16 CFR 500.19: 1 litre = 0.264172 US gal.
    [Fact]
    public void A_hundred_litres_are_26_4172_US_gallons() =>
        Assert.Equal(26.4172, Volume.FromLitres(100).InUSGallons, 4);

    // 1 imperial gallon = 4.54609 L exactly (from memory).
    [Fact]
    public void Ten_imperial_gallons_are_45_4609_litres() =>
        Assert.Equal(45.4609, Volume.FromImperialGallons(10).InLitres, 1e-12);

    // 1 in³ = 16.387064 mL exactly, the cube of 2.54 cm (16 CFR 500.19 prints 16.3871).
    [Fact]
    public void A_box_of_24_by_12_by_16_inches_holds_not_quite_20_gallons()
    {
        var box = Volume.OfBox(
            Length.FromInches(24), Length.FromInches(12), Length.FromInches(16));

        Assert.Equal(75.51159, box.InLitres, 5);
        Assert.Equal(19.948, box.InUSGallons, 3);
        Assert.Equal(
            16.387064,
            1000 * Volume.OfBox(
                Length.FromInches(1), Length.FromInches(1), Length.FromInches(1)).InLitres,
            1e-9);
    }

    // UnitsNet 5.75.1, Length and Volume.
    [Fact]
    public void Lengths_and_volumes_agree_with_the_reference_library() =>
        Assert.All(ReferenceGrid.Between(0, 500), value =>
        {
            Same(UnitsNet.Length.FromInches(value).Centimeters, Length.FromInches(value));
            Same(UnitsNet.Length.FromMillimeters(value).Centimeters, Length.FromMillimetres(value));
            Same(UnitsNet.Volume.FromUsGallons(value).Liters, Volume.FromUSGallons(value));
            Same(
                UnitsNet.Volume.FromImperialGallons(value).Liters,
                Volume.FromImperialGallons(value));
            Same(
                UnitsNet.Length.FromFeet(value).Centimeters,
                Length.FromCanonical(DimensionCatalogue.Length.Find("ft")!.ToCanonical(value)));
        });

    private static void Same<T>(double expected, T actual)
        where T : struct, IQuantity<T> =>
        Assert.Equal(expected, actual.Canonical, 1e-9 * Math.Max(1, expected));

    private static double Parsed(string text, Dimension dimension) =>
        QuantityText.Parse(text, dimension).Value.Low!.Value;
}
