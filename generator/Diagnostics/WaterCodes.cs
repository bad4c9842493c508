using static CareSheets.Diagnostics.Severity;

namespace CareSheets.Diagnostics;

/// <summary>WA: sums on water that can't be done, and needs that no water can meet.</summary>
public static class WaterCodes
{
    public static readonly DiagnosticCode OutsideFormula = new("WA901", Error,
        "{given} is outside the range of this sum ({allowed})",
        "{formula} is stated for that range only; nothing is known beyond it.");

    public static readonly DiagnosticCode BetweenNoWaters = new("WA902", Error,
        "{given} does not lie between the two waters ({allowed}), so no blend of them has it",
        "Take a water that is softer or harder than the target, or another target.");

    public static readonly DiagnosticCode SameWaters = new("WA903", Error,
        "Both waters have {allowed}, so no blend of them has {given}",
        "Take another water for one of the two.");

    public static readonly DiagnosticCode AcidityDoesNotBlend = new("WA904", Error,
        "pH is a logarithm and does not blend in proportion",
        "Use water mix, which mixes alkalinity and carbon and finds the pH from them.");

    public static readonly DiagnosticCode NoSuchWater = new("WA905", Error,
        "No water of this pH has an alkalinity of {given}; it takes {allowed}",
        "Measure both again: one of the two readings is off.");

    public static readonly DiagnosticCode NothingHappens = new("WA906", Error,
        "{given} mixes, changes or moves nothing", "Give more than none of it.");

    public static readonly DiagnosticCode NeverReached = new("WA907", Error,
        "Water changes never bring the tank to {given}",
        "A tank moves from its own figure towards the fresh water's, and never quite reaches it: {allowed}.");

    public static readonly DiagnosticCode NotApproaching = new("WA908", Error,
        "From the first reading to the second ({given}) the bag does not come nearer to the tank",
        "Read a bag twice while it floats: the second reading lies between the first and the tank ({allowed}).");

    public static readonly DiagnosticCode OneFigure = new("WA909", Error,
        "{given} is a range where one figure is needed", "Write one figure, as in {example}.");

    public static readonly DiagnosticCode Missing = new("WA910", Error,
        "The {dimension} is not given", "{why} Write it as in {example}.");

    public static readonly DiagnosticCode UnknownSystem = new("WA911", Error,
        "The shop has no water {name}", "{suggestion}");

    public static readonly DiagnosticCode OxygenUnattainable = new("WA912", Error,
        "No air can meet this need of oxygen: {need} is {limit}, and water of {temperature} at {altitude} takes " +
        "{attainable} at most",
        "Check the need, the temperature, the altitude in store.yaml and its limit ({source}).");

    public static readonly DiagnosticCode OxygenAtWarmEnd = new("WA913", Warning,
        "At the warm end of its range no air can meet this need of oxygen: {need} is {limit}, and water of " +
        "{temperature} at {altitude} takes {attainable} at most",
        "Check the need and the warm end of the temperature; the limit is from: {source}.");

    public static readonly DiagnosticCode BeyondExtremes = new("WA914", Error,
        "{given} is more than can be ({allowed})", "Check the number and its unit.");

    public static readonly DiagnosticCode OtherIonsDecide = new("WA915", Error,
        "At {given} this sum says nothing ({allowed})",
        "There other acids and bases than carbonic decide the pH, and kits do not measure so finely.");

    public static readonly DiagnosticCode ReadingsApart = new("WA916", Error,
        "The two readings do not go together: the water would hold {given} of CO₂, and takes up {allowed}",
        "Measure pH and carbonate hardness again; other acids than carbonic lower the pH too.");

    public static readonly DiagnosticCode RawTap = new("WA917", Error,
        "No fishes go into water straight from the tap",
        "It may hold chlorine or chloramine, is cold, and has no filter. Name the tank that receives them, {waters}.");

    public static readonly IReadOnlyList<DiagnosticCode> All =
    [
        OutsideFormula, BetweenNoWaters, SameWaters, AcidityDoesNotBlend, NoSuchWater, NothingHappens,
        NeverReached, NotApproaching, OneFigure, Missing, UnknownSystem, OxygenUnattainable, OxygenAtWarmEnd,
        BeyondExtremes, OtherIonsDecide, ReadingsApart, RawTap,
    ];
}
