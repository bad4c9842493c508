using System.Text.RegularExpressions;

namespace CareSheets.Renaming;

/// <summary>
/// Conditions such as <c>taxon is Danio or Devario</c> in the fish room's rules, hazards and demands: without an
/// edit a rule would quietly stop to hold for what has moved.
/// </summary>
internal static partial class TaxonEdit
{
    public static string Apply(string text, IReadOnlyList<NameMove> moves, IReadOnlyList<EmptiedGenus> emptied) =>
        Condition().Replace(text, condition =>
        {
            var edited = condition.Value;
            foreach (var move in moves)
                edited = Word(move.OldName.ToString()).Replace(edited, move.Name.ToString());
            foreach (var genus in emptied)
                edited = Word(genus.Name).Replace(edited, string.Join(" or ", new[] { genus.Name }
                    .Concat(genus.Now.Where(now => !Word(now).IsMatch(condition.Value)))));
            return edited;
        });

    /// <summary>A name that no epithet follows; a genus stays in the list, for drafts may still be in it.</summary>
    private static Regex Word(string name) =>
        new($@"(?<![\w-]){Regex.Escape(name)}(?![\w-])(?! (?!or\b)[a-z])", RegexOptions.CultureInvariant);

    private const string Taxon = @"[A-Z][\w-]*(?: (?!or\b)[a-z-]+)*";

    [GeneratedRegex($@"\btaxon is(?: not)?\s+{Taxon}(?:\s+or\s+{Taxon})*")]
    private static partial Regex Condition();
}
