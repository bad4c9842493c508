using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>
/// A rule of husbandry as the fish room wrote it: where the first condition holds, the second one is
/// expected. It speaks only when the entry states enough to decide both.
/// </summary>
/// <param name="Name">Its name in words, which waivers use.</param>
/// <param name="Says">What is wrong where the expectation fails, in one sentence without a full stop.</param>
/// <param name="Remedy">What to do about it.</param>
/// <param name="Reason">Why it is so.</param>
/// <param name="Fires">A partial entry that breaks it.</param>
/// <param name="Passes">A partial entry that it concerns and that keeps it.</param>
public sealed record Rule(
    Sourced<string> Name, Severity Severity, string Says, string Remedy, string Reason, Evidence Evidence,
    Condition When, Condition Expects, EntryFields Fires, EntryFields Passes)
{
    public bool IsBrokenBy(EntryFields entry) =>
        When.Judge(entry) == Truth.Yes && Expects.Judge(entry) == Truth.No;

    public bool IsKeptBy(EntryFields entry) =>
        When.Judge(entry) == Truth.Yes && Expects.Judge(entry) == Truth.Yes;
}
