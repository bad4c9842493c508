namespace CareSheets.Proofing.Prose;

/// <summary>
/// One number or two ends in running text, with the unit if there is one: what was written, before
/// anybody asks what it is about.
/// </summary>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token after it and its unit.</param>
/// <param name="NumberEnd">The token after its numbers.</param>
internal readonly record struct Amount(
    int First, int Next, int NumberEnd, double Low, double High, UnitPhrase? Unit, bool IsDozen)
{
    /// <summary>Reads at one token, or gives nothing.</summary>
    public static Amount? Read(TokenRun run, int at)
    {
        if (Decade(run, at) is { } decade)
            return decade;
        if (NumberPhrase.Read(run, at) is not { } first)
            return null;
        var unit = UnitPhrase.Read(run, first.Next);
        if (first.NeedsUnit && unit is null)
            return null;
        var next = unit?.Next ?? first.Next;
        var amount = new Amount(at, next, first.Next, first.Value, first.Value, unit, first.IsDozen);
        return Converted(run, AndAHalf(run, Ranged(run, amount)));
    }

    private static Amount Ranged(TokenRun run, Amount amount)
    {
        var joins = run[amount.Next].Text switch
        {
            "-" or "–" or "—" or "−" or "to" or "or" => true,
            "and" => run[amount.First - 1].Text == "between",
            _ => false,
        };
        if (!joins || NumberPhrase.Read(run, amount.Next + 1) is not { } second ||
            second.Value < amount.Low || (second.NeedsUnit && UnitPhrase.Read(run, second.Next) is null))
            return amount;
        var unit = UnitPhrase.Read(run, second.Next);
        var isOther = unit is { } one && amount.Unit is { } other && one.Low != other.Low;
        if (second.NeedsUnit || isOther)
            return amount; // "six months or a year": two amounts, not one
        return amount with
        {
            High = second.Value,
            Next = unit?.Next ?? second.Next,
            NumberEnd = second.Next,
            Unit = unit ?? amount.Unit,
        };
    }

    /// <summary>"a foot and a half"</summary>
    private static Amount AndAHalf(TokenRun run, Amount amount) =>
        amount.Unit is not null && run[amount.Next].Text == "and" && run[amount.Next + 1].Text == "a" &&
        run[amount.Next + 2].Text == "half"
            ? amount with { Low = amount.Low + 0.5, High = amount.High + 0.5, Next = amount.Next + 3 }
            : amount;

    /// <summary>The same in another unit, in brackets: "76 °F (24 °C)".</summary>
    private static Amount Converted(TokenRun run, Amount amount)
    {
        if (amount.Unit is not { } unit || run[amount.Next].Text != "(" ||
            NumberPhrase.Read(run, amount.Next + 1) is not { } first)
            return amount;
        var inner = Ranged(run, new Amount(
            amount.Next + 1, UnitPhrase.Read(run, first.Next)?.Next ?? first.Next, first.Next,
            first.Value, first.Value, UnitPhrase.Read(run, first.Next), false));
        return inner.Unit?.Measure == unit.Measure && run[inner.Next].Text == ")"
            ? amount with { Next = inner.Next + 1 }
            : amount;
    }

    /// <summary>"mid-seventies", "low 70s": a third of ten degrees.</summary>
    private static Amount? Decade(TokenRun run, int at)
    {
        if (!NumberWords.PartsOfTen.TryGetValue(run[at].Text, out var part))
            return null;
        var ten = run[at + 1].Text is "-" or "to" ? at + 2 : at + 1;
        if (NumberWords.Decades.TryGetValue(run[ten].Text, out var decade))
            return OfDecade(decade, ten + 1);
        return run[ten].Kind == TokenKind.Number && run[ten].Value % 10 == 0 && run[ten + 1].Text == "s" &&
            run[ten + 1].Touches(run[ten])
            ? OfDecade(run[ten].Value, ten + 2)
            : null;

        Amount OfDecade(double tens, int next) => new(
            at, next, next, tens + part.From, tens + part.To,
            new UnitPhrase(Measure.Degrees, null, null, next), false);
    }
}
