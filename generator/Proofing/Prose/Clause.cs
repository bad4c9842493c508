namespace CareSheets.Proofing.Prose;

/// <summary>
/// The stretch of a sentence around an amount, up to the next comma or the like: the words that
/// tell what the amount is about.
/// </summary>
/// <param name="First">First token of the amount.</param>
/// <param name="Next">The token after the amount with its unit.</param>
internal readonly record struct Clause(TokenRun Run, int Start, int End, int First, int Next)
{
    public bool Has(IReadOnlySet<string> words) => HasBefore(words) || HasAfter(words);

    public bool HasBefore(IReadOnlySet<string> words) => IsIn(words, Start, First);

    public bool HasAfter(IReadOnlySet<string> words) => IsIn(words, Next, End);

    /// <summary>Within so many tokens before the amount.</summary>
    public bool HasJustBefore(IReadOnlySet<string> words, int reach) =>
        IsIn(words, Math.Max(Start, First - reach), First);

    public bool HasJustAfter(IReadOnlySet<string> words, int reach) =>
        IsIn(words, Next, Math.Min(End, Next + reach));

    public bool SentenceHas(IReadOnlySet<string> words) =>
        IsIn(words, Run.SentenceStart(First), Run.SentenceEnd(Next));

    /// <summary>The last token before the amount that is one of the words, or -1.</summary>
    public int LastBefore(IReadOnlySet<string> words)
    {
        for (var i = First - 1; i >= Start; i--)
        {
            if (words.Contains(Run[i].Text))
                return i;
        }
        return -1;
    }

    /// <summary>The word so many tokens before the amount, within the sentence.</summary>
    public string Before(int back) => WithinSentence(First - back);

    /// <summary>The word so many tokens after the amount, the next one being 0.</summary>
    public string After(int ahead) => WithinSentence(Next + ahead);

    private string WithinSentence(int index) => Run[index].Kind == TokenKind.Stop ? "" : Run[index].Text;

    private bool IsIn(IReadOnlySet<string> words, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (words.Contains(Run[i].Text))
                return true;
        }
        return false;
    }
}
