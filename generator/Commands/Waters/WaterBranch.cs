using Spectre.Console.Cli;

namespace CareSheets.Commands.Waters;

/// <summary>The sums on water as commands under <c>water</c>.</summary>
internal static class WaterBranch
{
    public static void Add(IConfigurator configuration) => configuration.AddBranch("water", water =>
    {
        water.SetDescription("Sums on water: hardness, blends, changes, ammonia, CO₂, oxygen, the transport bag.");
        water.AddCommand<HardnessCommand>("hardness")
            .WithDescription("A hardness in all units, and what it is called.")
            .WithExample("water", "hardness", "\"8 °dH\"")
            .WithExample("water", "hardness", "--calcium", "\"40 mg/L\"", "--magnesium", "\"8 mg/L\"");
        water.AddCommand<BlendCommand>("blend")
            .WithDescription("How much of each of two waters meets a target.")
            .WithExample("water", "blend", "15dH", "0.5dH", "5dH", "--volume", "100L");
        water.AddCommand<ChangeCommand>("change")
            .WithDescription("A tank after repeated water changes, or how many a target takes.")
            .WithExample("water", "change", "\"40 mg/L\"", "\"10 mg/L\"", "--replaced", "25%", "--times", "4");
        water.AddCommand<AmmoniaCommand>("ammonia")
            .WithDescription("How much of the ammonia is the form that harms.")
            .WithExample("water", "ammonia", "--ph", "8", "--temperature", "24C", "--total", "\"1 mg/L as N\"");
        water.AddCommand<CarbonDioxideCommand>("carbon-dioxide")
            .WithDescription("CO₂ from carbonate hardness and pH.")
            .WithExample("water", "carbon-dioxide", "--ph", "6.8", "--kh", "4dKH", "--temperature", "25C");
        water.AddCommand<MixCommand>("mix")
            .WithDescription("The pH of two waters mixed.")
            .WithExample("water", "mix", "\"pH 6.2, 1 °dKH, 24 °C\"", "tap", "--volume", "2L", "--other-volume", "6L");
        water.AddCommand<OxygenCommand>("oxygen")
            .WithDescription("The most oxygen that water takes from the air.")
            .WithExample("water", "oxygen", "--temperature", "28C", "--altitude", "600m");
        water.AddCommand<FloatCommand>("float")
            .WithDescription("A sealed bag afloat: how warm, how long.")
            .WithExample("water", "float", "--bag", "20C", "--tank", "25C", "--after", "\"20 min\"");
        water.AddCommand<BagCommand>("bag")
            .WithDescription("How to open a transport bag.")
            .WithExample("water", "bag", "--temperature", "22C", "--ph", "6.2", "--ammonia", "\"8 mg/L as N\"",
                "--hours", "26h", "--into", "\"Hard water\"");
    });
}
