namespace CareSheets.Proofing.Prose;

/// <summary>A number read from tokens: its value and the token after it.</summary>
/// <param name="NeedsUnit">"a", "half a": a number only before a unit.</param>
/// <param name="IsDozen">"a dozen", "half a dozen": a number of fish more often than not.</param>
internal readonly record struct NumberPhrase(double Value, int Next, bool NeedsUnit = false, bool IsDozen = false)
{
    /// <summary>Reads at one token, or gives nothing: digits, words, dozens, halves and articles.</summary>
    public static NumberPhrase? Read(TokenRun run, int at)
    {
        var token = run[at];
        if (token.Kind == TokenKind.Number)
            return double.IsNaN(token.Value) ? null : Halved(run, new NumberPhrase(token.Value, at + 1));
        if (token.Kind != TokenKind.Word)
            return null;
        return token.Text switch
        {
            "half" when run[at + 1].Text is "a" or "an" => run[at + 2].Text == "dozen"
                ? new NumberPhrase(6, at + 3, IsDozen: true)
                : new NumberPhrase(0.5, at + 2, NeedsUnit: true),
            "a" or "an" => Article(run, at),
            "dozen" => new NumberPhrase(12, at + 1, IsDozen: true),
            _ => Words(run, at) is { } words ? Halved(run, words) : null,
        };
    }

    private static NumberPhrase Article(TokenRun run, int at) => run[at + 1].Text switch
    {
        "dozen" => new NumberPhrase(12, at + 2, IsDozen: true),
        "hundred" => Hundred(run, 1, at + 2),
        "couple" => new NumberPhrase(2, run[at + 2].Text == "of" ? at + 3 : at + 2),
        "trio" => new NumberPhrase(3, at + 2),
        _ => new NumberPhrase(1, at + 1, NeedsUnit: true),
    };

    private static NumberPhrase? Words(TokenRun run, int at)
    {
        if (NumberWords.Small.TryGetValue(run[at].Text, out var small))
            return run[at + 1].Text == "hundred" ? Hundred(run, small, at + 2) : new NumberPhrase(small, at + 1);
        if (!NumberWords.Tens.TryGetValue(run[at].Text, out var tens))
            return null;
        var next = run[at + 1].Text == "-" ? at + 2 : at + 1;
        return NumberWords.Small.TryGetValue(run[next].Text, out var ones) && ones is > 0 and < 10
            ? new NumberPhrase(tens + ones, next + 1)
            : new NumberPhrase(tens, at + 1);
    }

    private static NumberPhrase Hundred(TokenRun run, double count, int at)
    {
        var next = run[at].Text == "and" ? at + 1 : at;
        return run[next].Kind == TokenKind.Word && Words(run, next) is { Value: < 100 } rest
            ? rest with { Value = (count * 100) + rest.Value }
            : new NumberPhrase(count * 100, at);
    }

    /// <summary>"two and a half" before its unit.</summary>
    private static NumberPhrase Halved(TokenRun run, NumberPhrase number) =>
        run[number.Next].Text == "and" && run[number.Next + 1].Text == "a" && run[number.Next + 2].Text == "half"
            ? number with { Value = number.Value + 0.5, Next = number.Next + 3 }
            : number;
}
