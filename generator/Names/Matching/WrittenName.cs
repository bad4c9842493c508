namespace CareSheets.Names.Matching;

/// <summary>A name to be matched, with what stood beside it.</summary>
/// <param name="Text">The name as written, without size, sex and count.</param>
/// <param name="Beside">A vernacular name in a column of its own, or empty.</param>
/// <param name="Genera">Genera written in full elsewhere in the same list, for shortened ones.</param>
public sealed record WrittenName(
    NameReading Reading, string Text, string Beside, IReadOnlySet<string> Genera)
{
    /// <summary>Codes of the trade in the name and beside it.</summary>
    public IReadOnlyList<string> Codes { get; } =
        [.. Reading.TradeCodes.Concat(NameReader.Read(Beside).TradeCodes).Distinct()];

    public static WrittenName Of(string text) =>
        new(NameReader.Read(text), text, "", new HashSet<string>());
}
