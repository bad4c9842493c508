namespace CareSheets.Proofing.Prose;

/// <summary>
/// The tokens of a text; beyond either end stands nothing. Asked for a clause, it looks no farther
/// than fifty tokens to either side, so that a text without any full stop takes no longer.
/// </summary>
internal sealed class TokenRun(IReadOnlyList<ProseToken> tokens)
{
    private const int Farthest = 50;

    private static readonly HashSet<string> Breaks = [",", ";", ":", "(", ")", "—"];
    private static readonly HashSet<string> BreakingWords = ["while", "whereas", "whilst", "but"];

    public int Count => tokens.Count;

    public ProseToken this[int index] => index >= 0 && index < tokens.Count ? tokens[index] : ProseToken.None;

    /// <summary>The clause that holds the tokens from <paramref name="first"/> up to <paramref name="end"/>.</summary>
    public Clause ClauseOf(int first, int end)
    {
        var start = first;
        while (start > 0 && first - start < Farthest && !Ends(start - 1) && !BreakingWords.Contains(this[start].Text))
            start--;
        var stop = end;
        while (stop < Count && stop - end < Farthest && !Ends(stop) && !BreakingWords.Contains(this[stop].Text))
            stop++;
        return new Clause(this, start, stop, first, end);
    }

    /// <summary>First token of the sentence, or one that is far enough away.</summary>
    public int SentenceStart(int index)
    {
        var start = index;
        while (start > 0 && index - start < 2 * Farthest && this[start - 1].Kind != TokenKind.Stop)
            start--;
        return start;
    }

    public int SentenceEnd(int index)
    {
        var end = index;
        while (end < Count && end - index < 2 * Farthest && this[end].Kind != TokenKind.Stop)
            end++;
        return end;
    }

    /// <summary>Whether a clause can't go beyond this token.</summary>
    public bool Ends(int index) => this[index].Kind == TokenKind.Stop || Breaks.Contains(this[index].Text);
}
