using System.Text.RegularExpressions;

namespace CareSheets.Renaming;

/// <summary>
/// The record of printed cards under new names, so that the card with the old name is known to be out of date. A
/// name that the record already has keeps its own lines, and the old one's stay as they are.
/// </summary>
internal static class PrintedEdit
{
    public static string Apply(string text, IEnumerable<NameMove> moves) => moves.Aggregate(text, (before, move) =>
        Key(move.Name.Slug).IsMatch(before)
            ? before
            : Key(move.Entry.Name).Replace(before, $"{move.Name.Slug}:"));

    private static Regex Key(string entry) => new($"^{Regex.Escape(entry)}:", RegexOptions.Multiline);
}
