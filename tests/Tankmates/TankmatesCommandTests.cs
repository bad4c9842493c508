using System.Text.Json;
using CareSheets.Commands;
using CareSheets.Tests.Support;
using CareSheets.Tankmates;
using CareSheets.Tankmates.Tanks;

namespace CareSheets.Tests.Tankmates;

/// <summary>What the command says, for people and for programs.</summary>
public sealed class TankmatesCommandTests
{
    [Fact]
    public void People_read_verdict_reasons_with_figures_and_the_shared_water()
    {
        var text = new GatheringText(Shop.Site).Print(
            Of("120x40x50cm", "pterophyllum-scalare", "paracheirodon-innesi"));
        Assert.Contains("Keep them apart.", text, StringComparison.Ordinal);
        Assert.Contains("A grown angelfish can swallow fish up to 7 cm", text, StringComparison.Ordinal);
        Assert.Contains("overlap in 24–26 °C (75–79 °F) only", text, StringComparison.Ordinal);
        Assert.Contains("at least 375 L", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Swiss", text, StringComparison.Ordinal); // nothing is counted for a life together
        Assert.DoesNotContain("{", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Programs_read_reasons_as_kinds_and_numbers()
    {
        using var json = JsonDocument.Parse(
            GatheringJson.Print(Shop.Site, Of("240 L", "pterophyllum-scalare", "paracheirodon-innesi")));
        var pair = json.RootElement.GetProperty("pairs")[0];
        Assert.Equal("apart", pair.GetProperty("verdict").GetString());
        var reason = pair.GetProperty("reasons")[0];
        Assert.Equal("WouldSwallow", reason.GetProperty("kind").GetString());
        var reach = reason.GetProperty("ofOne").GetProperty("reach").GetProperty("range");
        Assert.Equal(0.46 * 15, reach.GetProperty("low").GetDouble(), 6);
        Assert.Equal(240, json.RootElement.GetProperty("tank").GetProperty("litres").GetDouble());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("tank").GetProperty("kilograms").ValueKind);
    }

    [Fact]
    public void A_tank_of_which_nobody_said_that_it_holds_salt_never_fits_a_fish_that_needs_it()
    {
        var text = new GatheringText(Shop.Site).Print(Of("150x60x60cm", "dichotomyctere-nigroviridis"));
        Assert.DoesNotContain("fits all of them", text, StringComparison.Ordinal);
        Assert.Contains("Nobody can say yet whether your tank fits.", text, StringComparison.Ordinal);
        Assert.Contains("is kept at 7–17 g/L, and nobody has said", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_that_no_sheet_states_are_never_told_as_a_need()
    {
        var text = new GatheringText(Shop.Site).Print(Of("60 L", "boraras-brigittae"));
        Assert.Contains("Length of the tank: chili rasbora needs at least 45 cm", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Width of the tank", text, StringComparison.Ordinal);
        Assert.Contains("the least that it asks for, which is not what they need", text, StringComparison.Ordinal);
        Assert.Contains("do not say that your tank is lawful", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_relatives_suggest_is_told_as_theirs_and_pH_keeps_its_small_letter()
    {
        var text = new GatheringText(Shop.Site).Print(Of(
            "500 L", "carinotetraodon-irrubesco", "poecilia-velifera"));
        Assert.Contains(
            "  pH: red-eyed red-tail puffer at 6.1–7.2 (its own is unknown, its relatives suggest this), Yucatán molly",
            text, StringComparison.Ordinal);
        Assert.DoesNotContain("PH", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("120x40")]
    [InlineData("20 gallons")]
    [InlineData("0x0x0cm")]
    public void An_impossible_tank_is_refused_before_anything_is_read(string tank)
    {
        var settings = new TankmatesSettings { Names = ["danio-rerio"], Tank = tank };
        var result = settings.Validate();
        Assert.False(result.Successful);
        Assert.Contains(tank, result.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("neon tetrra", "neon tetra")]
    [InlineData("paracheirodon-inesi", "paracheirodon-innesi")]
    public void An_unknown_name_returns_2_and_offers_the_nearest(string typed, string offered)
    {
        var (code, errors) = Call(Repository.Root, typed);
        Assert.Equal(2, code);
        Assert.Contains($"There is no species {typed}. Did you mean ", errors, StringComparison.Ordinal);
        Assert.Contains(offered, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("L46")]
    [InlineData("lda 022")]
    public void A_code_of_the_trade_is_a_name(string typed) => Assert.Equal((0, ""), Call(Repository.Root, typed));

    [Fact]
    public void The_same_twice_by_two_names_is_one_species()
    {
        var group = Of("60x30x30cm", "paracheirodon-innesi", "paracheirodon-innesi");
        Assert.Empty(group.Pairs);
        Assert.Equal(8, group.Count);
    }

    [Fact]
    public void A_draft_is_told_as_one()
    {
        using var workshop = new Workshop();
        workshop.Replace("content/species/danio-margaritatus.md", "\norder:", "\ndraft: true\norder:");
        Directory.CreateDirectory(workshop["themes"]);
        Directory.Move(workshop["theme"], workshop["themes/riffle"]);
        var (code, errors) = Call(workshop.Folder, "Danio margaritatus");
        Assert.Equal(2, code);
        Assert.Contains("Danio margaritatus is a draft", errors, StringComparison.Ordinal);
    }

    private static Gathering Of(string tank, params string[] names) => Gathering.Of(
        names.Select(n => Tankmate.Of(Shop.Collection.Find(n)!, Shop.Collection, Shop.Relatives.Suggest)),
        Shop.Collection.Ranges, TankText.Read(tank).Tank);

    private static (int Code, string Errors) Call(string folder, string name)
    {
        var start = new System.Diagnostics.ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        var program = Path.Combine(AppContext.BaseDirectory, "caresheets.dll");
        foreach (var argument in new[] { "exec", program, "tankmates", name })
            start.ArgumentList.Add(argument);
        using var process = System.Diagnostics.Process.Start(start)!;
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, errors);
    }
}
