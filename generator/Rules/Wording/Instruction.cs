namespace CareSheets.Rules.Wording;

/// <summary>
/// Whether a caution sends whoever is hurt to those who can help: "show a doctor any prick", "call the emergency
/// number". That a doctor is merely named in it is no such order.
/// </summary>
internal static class Instruction
{
    private const string Help = "doctor/hospital/medical/emergency/vet";

    private static readonly IReadOnlyList<SpokenPhrase> Orders = SpokenPhrase.All(
        $"show/see/consult/call/ask/let/have/tell/visit/ring/phone/dial .. {Help}", $"for/to/by a/the {Help}",
        "to hospital", $"need/needs/wants/want a/the {Help}", $"{Help} should/must/ought/has/sees/looks",
        "is an emergency");

    private static readonly SpokenPhrase NotPutOff = SpokenPhrase.Of($"never/not put/putting off .. {Help}");

    public static bool IsIn(string text) => SaidText.Find(text, Orders).Any(said => !Denial.IsTurned(said)) ||
        SaidText.Find(text, [NotPutOff]).Any();
}
