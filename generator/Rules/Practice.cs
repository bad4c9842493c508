namespace CareSheets.Rules;

/// <summary>All that the fish room has laid down as data: its rules, hazards and demands, in the files' order.</summary>
public sealed record Practice(
    IReadOnlyList<Rule> Rules, IReadOnlyList<Hazard> Hazards, IReadOnlyList<Demand> Demands)
{
    public static readonly Practice None = new([], [], []);
}
