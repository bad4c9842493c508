namespace CareSheets.Proofing.Prose;

/// <summary>Every quantity in a text that is about the keeping of its own species.</summary>
internal static class ProseReader
{
    private delegate ProseQuantity? Sense(Amount amount, Clause clause, ProseToken from, ProseToken to);

    /// <summary>Asked in this order; the first that makes sense of an amount has it.</summary>
    private static readonly Sense[] Senses =
    [
        WaterSense.Minerals, WaterSense.Acidity, WaterSense.Temperature, SizeSense.Length, SizeSense.Volume,
        LifeSense.Span, LifeSense.Group,
    ];

    public static IReadOnlyList<ProseQuantity> Read(ProseText text, SpeciesMentions mentions)
    {
        var run = new TokenRun(ProseTokens.Of(text.Text));
        var found = new List<ProseQuantity>();
        SubjectFinder? subjects = null;
        for (var i = 0; i < run.Count;)
        {
            if (Amount.Read(run, i) is not { } amount)
            {
                i++;
                continue;
            }
            var clause = run.ClauseOf(amount.First, amount.Next);
            if (Meant(run, amount, clause) is { } quantity &&
                !(quantity.Bound == ProseBound.Exact && BoundReader.IsNoAdvice(clause)) &&
                !(subjects ??= new SubjectFinder(run, mentions.In(run, text))).IsOfAnother(clause))
                found.Add(quantity);
            i = amount.Next;
        }
        return found;
    }

    private static ProseQuantity? Meant(TokenRun run, Amount amount, Clause clause)
    {
        foreach (var sense in Senses)
        {
            if (sense(amount, clause, run[amount.First], run[amount.Next - 1]) is { } quantity)
                return quantity;
        }
        return null;
    }
}
