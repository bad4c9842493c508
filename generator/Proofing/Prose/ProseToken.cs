namespace CareSheets.Proofing.Prose;

/// <summary>What a token of running text is.</summary>
internal enum TokenKind
{
    Word,
    Number,
    Mark,

    /// <summary>The end of a sentence or of a paragraph.</summary>
    Stop,
}

/// <summary>A word, a figure or a mark of running text, with its place there.</summary>
/// <param name="Text">In lower case.</param>
/// <param name="Value">Of a figure in digits; not a number for any other token.</param>
internal readonly record struct ProseToken(TokenKind Kind, string Text, int Start, int Length, double Value)
{
    public static readonly ProseToken None = new(TokenKind.Stop, "", 0, 0, double.NaN);

    public int End => Start + Length;

    /// <summary>Whether it follows the other without a space, as the unit in 24°C.</summary>
    public bool Touches(ProseToken before) => before.Length > 0 && before.End == Start;
}
