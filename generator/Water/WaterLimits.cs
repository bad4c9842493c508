using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>
/// The limits behind advice on water. Each has its source beside it; store.yaml may set another
/// under <c>waterLimits</c>.
/// </summary>
public sealed record WaterLimits
{
    private const string NoSource = "common practice, no source";

    /// <summary>Needs of oxygen in the words of the schema, from little to much.</summary>
    public static readonly IReadOnlyList<string> OxygenNeeds = ["ordinary", "high", "very high"];

    public static readonly WaterLimits Default = new();

    /// <summary>Un-ionised ammonia that nobody objects to.</summary>
    public WaterLimit<Ammonia> UnionisedAmmonia { get; init; } = new(
        Ammonia.FromMilligramsOfAmmonia(0.02),
        "Texas Parks and Wildlife, fish health laboratory page; its basis is not stated, " +
        "so it is read the stricter way, as NH₃");

    /// <summary>Un-ionised ammonia above which fishes come to harm.</summary>
    public WaterLimit<Ammonia> HarmfulAmmonia { get; init; } = new(
        Ammonia.FromMilligramsOfAmmonia(0.05),
        "University of Florida IFAS, fact sheet FA16, as reprinted; its basis is not stated, " +
        "so it is read the stricter way, as NH₃");

    /// <summary>A bag that was under way for no longer may be mixed slowly.</summary>
    public WaterLimit<Elapsed> ShortTransit { get; init; } = new(Elapsed.FromHours(6), NoSource);

    /// <summary>How far above the bag's the pH of the tank may be for slow mixing.</summary>
    public WaterLimit<AcidityDifference> MixingRise { get; init; } =
        new(AcidityDifference.FromPH(0.3), NoSource);

    /// <summary>A step of pH, up or down, beyond which the receiving water had better be adjusted first.</summary>
    public WaterLimit<AcidityDifference> AcidityStep { get; init; } = new(
        AcidityDifference.FromPH(1), NoSource + "; what is practised goes from 0.2 to 1 a day");

    /// <summary>What may be left between bag and tank when the bag is opened.</summary>
    public WaterLimit<TemperatureDifference> TemperatureStep { get; init; } =
        new(TemperatureDifference.FromKelvins(2), "Lim, Dhert and Sorgeloos 2003");

    /// <summary>In which the difference of a floated bag falls to 37 %.</summary>
    public WaterLimit<Elapsed> FloatTime { get; init; } = new(
        Elapsed.FromMinutes(37),
        "computed from Lim, Dhert and Sorgeloos 2003 (4 to 5 °C down to 2 °C in about 30 minutes); " +
        "measure your own bags");

    /// <summary>Oxygen for a need called ordinary.</summary>
    public WaterLimit<Concentration> OrdinaryOxygen { get; init; } = new(
        Concentration.FromMilligramsPerLitre(5),
        "Texas Parks and Wildlife, fish health laboratory page: more than 5 mg/L for good growth");

    /// <summary>Oxygen for a need called high.</summary>
    public WaterLimit<Concentration> HighOxygen { get; init; } = new(
        Concentration.FromMilligramsPerLitre(6),
        NoSource + "; the criterion of the UK trade for all fishes, seen only as quoted by others");

    /// <summary>Oxygen for a need called very high.</summary>
    public WaterLimit<Concentration> VeryHighOxygen { get; init; } =
        new(Concentration.FromMilligramsPerLitre(7), NoSource);

    /// <summary>Oxygen for a need in the words of the schema; nothing for a word that is not among them.</summary>
    public WaterLimit<Concentration>? OxygenFor(string need) => need switch
    {
        "ordinary" => OrdinaryOxygen,
        "high" => HighOxygen,
        "very high" => VeryHighOxygen,
        _ => null,
    };
}
