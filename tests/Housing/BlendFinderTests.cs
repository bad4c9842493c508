using CareSheets.Collection;
using CareSheets.Housing;
using CareSheets.Quantities;

namespace CareSheets.Tests.Housing;

/// <summary>Blends of the shop's waters for a species.</summary>
public sealed class BlendFinderTests
{
    private const string TapOnly =
        "tap: { temperature: 15 °C, ph: 7.6, hardness: 20 °dH, carbonateHardness: 12 °dKH }\n";

    // By hand: 4–18 °dH from 20 and 0 is 20 to 90 % of the tap.
    [Fact]
    public void Tap_and_pure_water_are_blended_into_the_range()
    {
        var shop = HousingShop.Read(TapOnly);
        var offer = Assert.Single(BlendFinder.Find(shop.Find("danio-margaritatus")!, shop));
        Assert.Equal((WaterSourceKind.Tap, WaterSourceKind.Pure), (offer.One.Kind, offer.Other.Kind));
        Assert.Equal(20, offer.OfOne.Min!.Value.InPercent, 1e-9);
        Assert.Equal(90, offer.OfOne.Max!.Value.InPercent, 1e-9);
        Assert.Equal(55, offer.Chosen.InPercent, 1e-9);
        Assert.Equal(11, offer.Hardness!.Value.InGermanDegrees, 1e-9);
        Assert.True(offer.PH!.Value.Contains(Acidity.FromPH(7.6)));
    }

    [Fact]
    public void Where_no_blend_does_none_is_offered()
    {
        var shop = HousingShop.Read(
            "tap: { ph: 7.0, hardness: 2 °dH, carbonateHardness: 1 °dKH }\n" +
            "systems: [{ name: Soft, ph: 6.5, hardness: 3 °dH, carbonateHardness: 1 °dKH }]\n");
        Assert.Empty(BlendFinder.Find(shop.Find("danio-margaritatus")!, shop)); // asks for 4–18 °dH
    }

    [Fact]
    public void Two_systems_are_blended_where_neither_does_alone()
    {
        var shop = HousingShop.Read("""
            systems:
              - { name: Soft, hardness: 2 °dH }
              - { name: Hard, hardness: 30 °dH }

            """);
        var offers = BlendFinder.Find(shop.Find("danio-margaritatus")!, shop).ToList();
        Assert.Equal(["Hard+", "Soft+Hard"], offers.Select(o => $"{o.One.Water.Name}+{o.Other.Water.Name}"));
        Assert.All(offers, o => Assert.InRange(o.Hardness!.Value.InGermanDegrees, 4, 18));
        Assert.All(offers, o => Assert.Null(o.PH)); // nobody measured it
    }

    [Fact]
    public void A_hardness_that_is_not_known_is_not_blended()
    {
        var shop = HousingShop.Read("tap: { ph: 7.6, carbonateHardness: 9 °dKH }\n");
        Assert.Empty(BlendFinder.Find(shop.Find("danio-margaritatus")!, shop));
    }

    [Fact]
    public void Every_offer_on_the_shop_s_own_content_lies_in_the_range()
    {
        var shop = Tankmates.Shop.Collection;
        var offers = shop.Entries.SelectMany(e => BlendFinder.Find(e, shop).Select(o => (Entry: e, Offer: o))).ToList();
        Assert.True(offers.Count > shop.Entries.Count);
        Assert.All(offers, o =>
        {
            var keep = o.Entry.Range("hardness")!.Of(Species.RangeKind.Keep)!.Range.Value.As<GeneralHardness>();
            var (hardness, slack) = (o.Offer.Hardness!.Value, GeneralHardness.FromMilligramsPerLitre(1e-9));
            Assert.True(!(hardness + slack < keep.Min) && !(hardness > keep.Max + slack), o.Entry.Name);
            Assert.True(o.Offer.OfOne.Contains(o.Offer.Chosen));
        });
    }
}
