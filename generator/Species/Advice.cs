using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>
/// What a buyer is told beside the figures. The shop says it for all its fish; an entry says it
/// where its species asks for something else.
/// </summary>
/// <param name="Routine">What to do each day and week.</param>
/// <param name="SettlingIn">How to bring it home and let it into the tank.</param>
/// <param name="Costs">What it costs to keep, in words.</param>
public sealed record Advice(string? Routine, string? SettlingIn, string? Costs)
{
    public static readonly Advice None = new(null, null, null);

    /// <summary>What this says, and where it is silent, what the other does.</summary>
    public Advice Or(Advice other) =>
        new(Routine ?? other.Routine, SettlingIn ?? other.SettlingIn, Costs ?? other.Costs);
}

/// <summary>The time of day at which a species is about.</summary>
/// <param name="When">Day, dusk or night; never empty.</param>
public sealed record Activity(IReadOnlyList<Sourced<string>> When, Evidence Evidence);
