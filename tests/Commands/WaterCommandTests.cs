using System.Text.Json;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Commands;

/// <summary>The sums on water as a shell sees them.</summary>
public sealed class WaterCommandTests
{
    // Arguments stand between bars. Every code of a sum that can't be done, and every kind of bad figure.
    [Theory]
    [InlineData("ammonia|--ph|8|--temperature|60C", "WA901", "(0–50 °C)")]
    [InlineData("oxygen|--temperature|20C|--pressure|0.4atm", "WA901", "(507–1115 hPa)")]
    [InlineData("carbon-dioxide|--ph|7|--kh|4dKH|--temperature|95C", "WA901", "(0–90 °C)")]
    [InlineData("blend|5dH|0dH|8dH", "WA902", "(0–5 °dH)")]
    [InlineData("blend|5dH|5dH|6dH", "WA903", "5 °dH")]
    [InlineData("blend|7|6|6.5", "WA904", "water mix")]
    [InlineData("change|7|6|--replaced|25%|--times|2", "WA904", "water mix")]
    [InlineData("carbon-dioxide|--ph|11|--kh|1dKH|--temperature|25C", "WA905", "≥ 2.81 °dKH")]
    [InlineData("mix|pH 10, 0dKH, 25C|pH 7, 4dKH, 25C", "WA905", "≥ 0.281 °dKH")]
    [InlineData("carbon-dioxide|--ph|6.8|--kh|0dKH|--temperature|25C", "WA915", "At 0 °dKH")]
    [InlineData("carbon-dioxide|--ph|5|--kh|20dKH|--temperature|25C", "WA915", "≥ pH 5.5")]
    [InlineData("carbon-dioxide|--ph|5.5|--kh|20dKH|--temperature|25C", "WA916", "2233 mg/L of CO₂")]
    [InlineData("hardness|99999 °dH", "WA914", "≤ 400 °dH")]
    [InlineData("hardness|30000 ppm CaCO3", "WA914", "≤ 7139 ppm CaCO₃")]
    [InlineData("bag|--temperature|22C|--hours|500h|--into|soft", "WA914", "≤ 168 h")]
    [InlineData("bag|--temperature|22C|--into|tap", "WA917", "Soft, Hard, \"pH 7.9")]
    [InlineData("bag|--temperature|22C|--into|Tab", "WA911", "Its waters: Soft, Hard.")]
    [InlineData("blend|15dH|1dKH|5dH", "QT306", "“dKH” is a unit of carbonate hardness")]
    [InlineData("change|18dH|3dKH|--replaced|25%|--times|2", "QT306", "“dKH” is a unit of carbonate hardness")]
    [InlineData("change|18dH|3dH|--replaced|25%|--target|5dKH", "QT306", "“dKH” is a unit of carbonate hardness")]
    [InlineData("carbon-dioxide|--ph|7|--kh|4|--temperature|25C", "QT303", "Write 4 °dKH.")]
    [InlineData("float|--bag|20C|--tank|25C|--after|20", "QT303", "Write 20 h or 20 min.")]
    [InlineData("ammonia|--temperature|25C", "WA910", "Write it as in 7.2.")]
    [InlineData("change|40mg/L|10mg/L|--replaced|25%|--times|2.5", "", "“2.5”: write a whole number")]
    [InlineData("oxygen|--temperature|20C|--altitude|9000m", "WA901", "(≤ 5477 m)")]
    [InlineData("oxygen|--temperature|20C|--altitude|20000ft", "WA901", "20000 ft is outside")]
    [InlineData("mix|pH 7, 4dKH, 25C|pH 7, 4dKH, 25C|--volume|0L|--other-volume|0L", "WA906", "moves nothing")]
    [InlineData("change|40mg/L|10mg/L|--replaced|25%|--target|5mg/L", "WA907", "10–40 mg/L")]
    [InlineData("change|40mg/L|10mg/L|--replaced|0%|--target|20mg/L", "WA907", "20 mg/L")]
    [InlineData("float|--bag|20C|--tank|25C|--after|30min|--then|19C", "WA908", "(20–25 °C)")]
    [InlineData("ammonia|--ph|7–8|--temperature|24C", "WA909", "7–8")]
    [InlineData("carbon-dioxide|--ph|7|--temperature|25C", "WA910", "carbonate hardness")]
    [InlineData("mix|pH 6.2, 24C|pH 7, 4dKH, 25C", "WA910", "carbonate hardness")]
    [InlineData("ammonia|--ph|7", "WA910", "temperature")]
    [InlineData("bag|--temperature|22C|--into|Sof", "WA911", "Did you mean Soft?")]
    [InlineData("hardness|-3dH", "QT312", "-3")]
    [InlineData("hardness|8", "QT303", "8 °dH")]
    [InlineData("hardness|140ppm", "QT308", "CaCO₃")]
    [InlineData("hardness|8,5 °dH", "QT304", "8.5 °dH")]
    [InlineData("hardness|8 apples", "QT307", "apples")]
    [InlineData("ammonia|--ph|15|--temperature|24C", "QT312", "15")]
    [InlineData("ammonia|--ph|8|--temperature|-300C", "QT312", "-300")]
    [InlineData("ammonia|--ph|8|--temperature|24", "QT303", "24 °C")]
    [InlineData("ammonia|--ph|8|--temperature|24C|--total|1mg/L", "QT308", "mg/L as NH₃")]
    [InlineData("blend|15dH|0dH|5dH|--volume|20 gal", "QT308", "US gal")]
    [InlineData("change|40mg/L|10mg/L|--replaced|125%|--times|2", "QT312", "125")]
    [InlineData("change|40mg/L|10mg/L|--replaced|25%|--times|0", "", "--times")]
    [InlineData("change|40mg/L|10mg/L|--replaced|25%", "", "--target")]
    [InlineData("oxygen|--temperature|20C|--altitude|10000m", "QT312", "10000")]
    [InlineData("hardness|NaN dH", "QT302", "NaN")]
    [InlineData("hardness|1e9 dH", "QT3", "hardness")]
    public void What_cannot_be_computed_returns_2_with_its_reason(string call, string code, string said)
    {
        var (exit, text, errors) = Shell.Water(call.Split('|'));
        Assert.Equal(2, exit);
        Assert.Equal("", text);
        Assert.Contains(code, errors, StringComparison.Ordinal);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("defect", errors, StringComparison.Ordinal);
    }

    // Figures from the tests of the sums themselves; the command's part is reading units and printing.
    [Theory]
    [InlineData("hardness|8 °dH", "143 mg/L CaCO₃, 14.3 °fH, 10 °e, 8.34 gpg")]
    [InlineData("hardness|7.4 gpg", "US Geological Survey, as quoted in other works: hard.")]
    [InlineData("hardness|10 °Clark", "7.99 °dH")]
    [InlineData("hardness|4 °dKH", "1.43 mmol/L")]
    [InlineData("hardness|--calcium|40 mg/L|--magnesium|8 mg/L", "133 mg/L CaCO₃")]
    [InlineData("blend|15dH|0.5dH|5dH|--volume|100L", "31 L of the first, 69 L of the second")]
    [InlineData("blend|150 ppm CaCO3|0dH|50 mg/L CaCO3", "33.3 % of the first")]
    [InlineData("blend|500 µS/cm|0.02 mS/cm|140 µS/cm", "25 % of the first")]
    [InlineData("blend|77F|15C|20C", "50 % of the first")]
    [InlineData("blend|5dH|5dH|5dH", "Both waters have it already")]
    [InlineData("change|40 mg/L|10 mg/L|--replaced|25%|--times|4", "After 4 changes of 25 % each: 19.5 mg/L.")]
    [InlineData("change|20 dH|2 dH|--replaced|30%|--target|100 ppm CaCO3", "It takes 5 changes")]
    [InlineData("ammonia|--ph|8|--temperature|75.2F|--total|1 mg/L as N", "0.061 mg/L as NH₃ (0.0502 as N)")]
    [InlineData("carbon-dioxide|--ph|7|--kh|4dKH|--temperature|25C", "14.1 mg/L of CO₂")]
    [InlineData("mix|soft|tap", "carbonate hardness, and 18.8 °C")]
    [InlineData("mix|pH 7, 4dKH, 25C|pH 7, 4dKH, 25C|--volume|2L|--other-volume|1 US gal", "pH 7.0 before")]
    [InlineData("oxygen|--temperature|20C|--pressure|700mmHg", "8.36 mg/L")]
    [InlineData("oxygen|--temperature|20C|--altitude|1500m", "7.55 mg/L")]
    [InlineData("oxygen|--temperature|25C|--altitude|-100ft", "8.29 mg/L")]
    [InlineData("float|--bag|20C|--tank|25C", "about 34 minutes")]
    [InlineData("float|--bag|20C|--tank|25C|--after|30min|--then|23C", "37 %: 32.7 minutes")]
    [InlineData("bag|--temperature|22C|--ph|6.2|--ammonia|8 mg/L as N|--kh|3dKH|--hours|26h|--into|hard",
        "Not into this tank yet: its pH is 1.7 above the bag's")]
    [InlineData("bag|--temperature|22C|--ph|7.5|--ammonia|0.3 mg/L as N|--hours|26h|--into|hard",
        "As far as pH goes, they can go into this tank: the step of 0.4 is within 1")]
    [InlineData("bag|--temperature|25C|--ph|8|--ammonia|2 mg/L as N|--into|pH 7.5, 25 °C",
        "Treat this bag before the others")]
    [InlineData("bag|--temperature|22C|--into|pH 7.9, 12 °dKH, 25 °C", "Not measured: pH of the bag, ammonia")]
    [InlineData("blend|4dKH|1dKH|50 mg/L CaCO3", "60 % of the first")]
    [InlineData("carbon-dioxide|--ph|6.6|--kh|4dKH|--temperature|25C", "35.4 mg/L of CO₂")]
    [InlineData("carbon-dioxide|--ph|6.6|--kh|4dKH|--temperature|25C", "More than about 30 mg/L can harm fishes")]
    [InlineData("carbon-dioxide|--ph|8.8|--kh|4dKH|--temperature|25C", "less than the air leaves in it (0.599 mg/L)")]
    [InlineData("change|40 mg/L|10 mg/L|--replaced|25%|--times|4", "of chlorine and chloramine with a conditioner")]
    public void Sums_are_printed_in_the_units_of_the_trade(string call, string said)
    {
        var (exit, text, errors) = Shell.Water(call.Split('|'));
        Assert.Equal(("", 0), (errors, exit));
        Assert.Contains(said, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hardness|8 °dH", "generalHardness.gpg")]
    [InlineData("blend|15dH|0dH|5dH", "first")]
    [InlineData("change|40 mg/L|10 mg/L|--replaced|25%|--times|4", "after")]
    [InlineData("ammonia|--ph|8|--temperature|24C", "share")]
    [InlineData("carbon-dioxide|--ph|7|--kh|4dKH|--temperature|25C", "carbonDioxide")]
    [InlineData("mix|soft|hard", "ph")]
    [InlineData("oxygen|--temperature|20C", "oxygen")]
    [InlineData("float|--bag|20C|--tank|25C", "minutes")]
    [InlineData("bag|--temperature|22C|--into|soft", "largestTotal")]
    public void Json_is_all_that_programs_get(string call, string figure)
    {
        var (exit, text, _) = Shell.Water([.. call.Split('|'), "--json"]);
        Assert.Equal(0, exit);
        using var json = JsonDocument.Parse(text);
        var found = json.RootElement.GetProperty("figures");
        foreach (var name in figure.Replace("gpg", "grainPerGallon", StringComparison.Ordinal).Split('.'))
            found = found.GetProperty(name);
        Assert.True(double.IsFinite(found.GetDouble()));
        Assert.True(json.RootElement.GetProperty("lines").GetArrayLength() > 0);
    }

    [Fact]
    public void A_refusal_is_json_too()
    {
        var (exit, text, _) = Shell.Water(["blend", "5dH", "0dH", "8dH", "--json"]);
        Assert.Equal(2, exit);
        using var json = JsonDocument.Parse(text);
        Assert.Equal(1, json.RootElement.GetProperty("errors").GetInt32());
    }

    [Fact]
    public void A_broken_store_file_returns_1_and_is_told_with_its_line()
    {
        var (exit, _, errors) = Shell.Water(["oxygen", "--temperature", "20C"], "altitude: 20\n");
        Assert.Equal(1, exit);
        Assert.Contains("content/store.yaml(8,11): error QT303", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_height_that_of_the_shop_counts() => Assert.Contains(
        "7.55 mg/L of oxygen from the air (1500 m)",
        Shell.Water(["oxygen", "--temperature", "20C"], "altitude: 1500 m\n").Text, StringComparison.Ordinal);

    [Fact]
    public void Sums_need_no_content_and_take_the_shop_s_limits_where_there_are_some()
    {
        string[] call = ["ammonia", "--ph", "8", "--temperature", "24C", "--total", "0.5 mg/L as N"];
        Assert.Contains("fishes come to harm (our vet)", Shell.Water(call, """
            waterLimits:
              harmfulAmmonia: { value: 0.02 mg/L as N, source: our vet }

            """).Text, StringComparison.Ordinal);
        Assert.Contains(
            "fishes should not have to stay in it", Shell.Water(call, store: null).Text, StringComparison.Ordinal);
    }
}
