namespace CareSheets.Proofing.Prose;

/// <summary>
/// Whether an amount may be about another fish. It is when one is named before it in its clause, or
/// earlier in the sentence without the talk coming back, or when the sentence goes on about one that
/// the sentence before began with. When in doubt it is about another: a false alarm is a defect.
/// </summary>
internal sealed class SubjectFinder(TokenRun run, bool[] others)
{
    private static readonly HashSet<string> Contrast = Cues.Of(
        "unlike compared while whereas where though although next beside whilst like");

    private static readonly HashSet<string> Beside = Cues.Of(
        "with beside than alongside near among for to from as against between");

    private static readonly HashSet<string> Pronouns = Cues.Of("it its they their he she these those");

    private static readonly HashSet<string> Own = Cues.Of("it they he she this");

    public bool IsOfAnother(Clause clause)
    {
        if (IsNamedHere(clause) || StartsWithRelative(clause))
            return true;
        var start = run.SentenceStart(clause.First);
        var named = LastMention(start, clause.Start);
        if (named >= 0)
            return !ComesBack(clause, start);
        return Pronouns.Contains(run[start].Text) && PreviousBeginsWithAnother(start);
    }

    /// <summary>Named before the amount, or after it without a "with" or "than" in front.</summary>
    private bool IsNamedHere(Clause clause)
    {
        for (var i = clause.Start; i < clause.First; i++)
        {
            if (others[i] && !IsBeside(i, clause.Start))
                return true;
        }
        for (var i = clause.Next; i < clause.End; i++)
        {
            if (others[i])
                return i - clause.Next < 3 || !IsBeside(i, clause.Next);
        }
        return false;
    }

    private bool IsBeside(int mention, int from)
    {
        for (var i = mention - 1; i >= Math.Max(from, mention - 5); i--)
        {
            if (Beside.Contains(run[i].Text))
                return true;
        }
        return false;
    }

    /// <summary>"..., which wants 20 °C" goes on about what was named before.</summary>
    private bool StartsWithRelative(Clause clause) =>
        run[clause.Start].Text is "which" or "who" or "whose" &&
        LastMention(run.SentenceStart(clause.First), clause.Start) >= 0;

    private int LastMention(int from, int to)
    {
        for (var i = to - 1; i >= from; i--)
        {
            if (others[i])
                return i;
        }
        return -1;
    }

    /// <summary>The clause has its own subject, and what was named before was only held against it.</summary>
    private bool ComesBack(Clause clause, int sentence)
    {
        for (var i = clause.Start; i < clause.First; i++)
        {
            if (run[i].Text == "this" && run[i + 1].Text is "one" or "fish" or "species")
                return true;
            if (Own.Contains(run[i].Text))
                return Contrast.Contains(run[sentence].Text);
        }
        return false;
    }

    private bool PreviousBeginsWithAnother(int sentence)
    {
        var start = run.SentenceStart(Math.Max(0, sentence - 1 - StopsBefore(sentence)));
        for (var i = start; i < Math.Min(start + 6, sentence); i++)
        {
            if (others[i])
                return true;
        }
        return false;
    }

    private int StopsBefore(int index)
    {
        var count = 0;
        while (index - 1 - count >= 0 && run[index - 1 - count].Kind == TokenKind.Stop)
            count++;
        return count;
    }
}
