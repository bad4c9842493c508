namespace CareSheets.Names;

/// <summary>
/// Author and year behind a scientific name. Parentheses say that the species was first described
/// in another genus (ICZN Code, 4th ed. 1999, Art. 51.3).
/// </summary>
public sealed record Authorship(string Text)
{
    public bool InParentheses => Text.StartsWith('(') && Text.EndsWith(')');

    /// <summary>The same author and year with the parentheses that the two genera ask for.</summary>
    public Authorship For(ScientificName now, ScientificName original)
    {
        var bare = InParentheses ? Text[1..^1] : Text;
        return new Authorship(now.Genus == original.Genus ? bare : $"({bare})");
    }
}
