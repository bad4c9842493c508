namespace CareSheets.Commands.Waters;

/// <summary>What a sum came to: lines for people, figures for programs.</summary>
internal sealed record WaterAnswer(IReadOnlyList<string> Lines, object Figures);
