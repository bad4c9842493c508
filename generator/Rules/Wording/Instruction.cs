namespace CareSheets.Rules.Wording;

/// <summary>Whether a caution says what to do: what to keep off, what to use, whom to call.</summary>
internal static class Instruction
{
    private const string Helper = "doctor/hospital/medical/emergency/vet";

    private static readonly IReadOnlyList<SpokenPhrase> Orders = SpokenPhrase.All(
        "never/nobody/nothing", "neither .. nor", "no person/animal/pet/part/hand/finger/fingers/one",
        "do/must/may not", "don't/mustn't/avoid/beware/mind",
        "keep/use/wear/wash/rinse/lift/carry/move/guide/coax/scoop/catch/handle",
        "tub/box/container/jar/cup/bowl/tube/pipe/bucket/tongs/gloves/beaker/trap",
        $"show/see/consult/call/ask/take/let/have/tell/visit .. {Helper}", $"for/to/by a/the {Helper}",
        $"need/needs/wants/want .. {Helper}", $"{Helper} should/must/has/have/number/help", "at once");

    public static bool IsIn(string text) => SaidText.Find(text, Orders).Any();
}
