using System.Text.RegularExpressions;

namespace CareSheets.Renaming;

/// <summary>
/// The taxa that an entry must not share a tank with, under new names. A genus that nobody is in any more gives
/// way to those that its species went to; one that some have left keeps them beside it, by their new names.
/// </summary>
internal static partial class CompanyEdit
{
    public static string Apply(string text, IReadOnlyList<NameMove> moves, IReadOnlyList<EmptiedGenus> emptied) =>
        NotWith().Replace(text, list => Names().Replace(list.Value, name => Now(name.Value, moves, emptied) switch
        {
            [var one] => one,
            var several => string.Join(
                list.Groups["block"].Success ? $"\n{list.Groups["indent"].Captures[0].Value}- " : ", ", several),
        }));

    private static IReadOnlyList<string> Now(
        string name, IReadOnlyList<NameMove> moves, IReadOnlyList<EmptiedGenus> emptied) =>
        moves.FirstOrDefault(m => m.OldName.ToString() == name) is { } move ? [move.Name.ToString()]
        : emptied.FirstOrDefault(g => g.Name == name) is { } genus ? genus.Now
        : [name, .. moves.Where(m => m.Entry.Genus == name && m.Name.Genus != name).Select(m => m.Name.ToString())];

    [GeneratedRegex(
        @"(?<=^ +not with: *)(?:\[[^\]]*\]|(?<block>(?:\n(?<indent> +)- [^\n]*)+))", RegexOptions.Multiline)]
    private static partial Regex NotWith();

    [GeneratedRegex("[A-Z][a-z]+(?: [a-z]+(?:-[a-z]+)?)?")]
    private static partial Regex Names();
}
