namespace CareSheets.Proofing.Prose;

/// <summary>Words that tell what an amount is about. Each list is read off ordinary care prose.</summary>
internal static class Cues
{
    public static readonly HashSet<string> Tank = Of("tank tanks aquarium aquaria aquariums");

    /// <summary>Tanks that are not the one to live in, and vessels that are none.</summary>
    public static readonly HashSet<string> OtherVessel = Of(
        "breeding rearing raising quarantine hospital spare nursery box bucket bag bags jar tub " +
        "bowl isolation transport");

    public static readonly HashSet<string> Breeding = Of(
        "spawn spawns spawning spawned breed breeds breeding bred egg eggs fry hatch hatches " +
        "hatching hatched brood broods larvae nest lay lays laying clutch incubate incubation " +
        "conditioning courtship courting pair");

    public static readonly HashSet<string> Wild = Of(
        "wild nature natural native river rivers stream streams brook creek creeks lake lakes pool " +
        "pools habitat swamp falls collectors collected measured recorded noon basin floods had " +
        "savannah forest january february march april june july august september october november " +
        "december");

    public static readonly HashSet<string> Season = Of("winter spring autumn night nights dawn frost");

    public static readonly HashSet<string> Borne = Of(
        "survive survives survived surviving borne bears bear bore withstand withstands tolerates " +
        "tolerate tolerated endures endured endure lethal laboratory trial briefly hour hours");

    public static readonly HashSet<string> Treatment = Of(
        "treat treated treating treatment spot medicine medicines medication dip bath dose vet " +
        "disease cure minute minutes");

    public static readonly HashSet<string> Difference = Of(
        "difference by drop drops fall falls rise rises swing swings cooler warmer colder lower " +
        "higher within change");

    public static readonly HashSet<string> Young = Of(
        "young youngster youngsters juvenile juveniles baby babies fry larvae newborn hatchling " +
        "hatchlings shop shops sold sale sell sells bought buy months weeks newcomers until year " +
        "after");

    /// <summary>Parts and things that have lengths of their own.</summary>
    public static readonly HashSet<string> Thing = Of(
        "deep depth sand gravel leap leaps leapt jump jumps gap gaps cover lid hole holes cave " +
        "caves pipe pipes tube tubes pebble pebbles stone stones rock rocks egg eggs wide thick " +
        "tall high height diameter across apart layer fin fins filament filaments sword barbel " +
        "barbels whisker whiskers mouth pellet pellets worm worms snail snails shrimp plant plants " +
        "leaf leaves sea altitude current second wave mesh slot slots sponge surface waterline " +
        "swallow swallows eats prey nest territory stripe stripes spot spots eye eyes scale scales " +
        "apiece closer distance");

    public static readonly HashSet<string> Growth = Of(
        "grow grows grown growing reach reaches reached attain attains get gets become becomes stay " +
        "stays remain remains measure measures tops adult adults exceed exceeds spans size length " +
        "maximum tiny giant maturity");

    public static readonly HashSet<string> Sex = Of("male males female females");

    public static readonly HashSet<string> Company = Of(
        "group groups shoal shoals school schools party parties troop troops gang gangs crowd " +
        "crowds colony band pack");

    public static HashSet<string> Of(string words) => [.. words.Split(' ')];
}
