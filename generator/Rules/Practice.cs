using CareSheets.Diagnostics;

namespace CareSheets.Rules;

/// <summary>All that the fish room has laid down as data: rules, hazards and demands, in the files' order.</summary>
public sealed record Practice(
    IReadOnlyList<Rule> Rules, IReadOnlyList<Hazard> Hazards, IReadOnlyList<Demand> Demands)
{
    public static readonly Practice None = new([], [], []);

    /// <summary>Every rule that the file names, whether or not it could be read; nothing without the file.</summary>
    public IReadOnlySet<string>? RuleNames { get; init; }

    /// <summary>Where hazards are told; nothing when not all of it can be read.</summary>
    public SourceSpan? HazardsFile { get; init; }
}
