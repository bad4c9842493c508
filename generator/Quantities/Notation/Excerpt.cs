namespace CareSheets.Quantities.Notation;

/// <summary>As much of somebody's text as fits into a message, safe to print.</summary>
internal static class Excerpt
{
    private const int Longest = 40;

    /// <summary>Cut after 40 characters; control characters and broken pairs become �.</summary>
    public static string Of(string text)
    {
        var isCut = text.Length > Longest;
        var kept = new System.Text.StringBuilder(Longest + 1);
        foreach (var rune in text.AsSpan(0, isCut ? Longest : text.Length).EnumerateRunes())
        {
            kept.Append(System.Text.Rune.IsControl(rune) ? "\uFFFD" : rune.ToString());
        }

        return isCut ? kept.Append('…').ToString() : kept.ToString();
    }
}
