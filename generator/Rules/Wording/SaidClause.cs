namespace CareSheets.Rules.Wording;

/// <summary>A word in lower case with its place in the text, from its first character to one past its last.</summary>
public readonly record struct SaidWord(string Text, int Start, int End);

/// <summary>The words between two marks of punctuation.</summary>
/// <param name="Opening">The first word of the sentence, up to a full stop, semicolon or the like.</param>
public sealed record SaidClause(IReadOnlyList<SaidWord> Words, SaidWord Opening)
{
    public string this[int index] => index >= 0 && index < Words.Count ? Words[index].Text : "";

    public int Start => Words[0].Start;

    public int Length => Words[^1].End - Start;
}

/// <summary>A phrase where a text says it.</summary>
/// <param name="At">Its first word in the clause.</param>
/// <param name="Count">How many words it has.</param>
public sealed record Said(SaidClause Clause, int At, int Count)
{
    public int Start => Clause.Words[At].Start;

    public int Length => Clause.Words[At + Count - 1].End - Start;

    /// <summary>The word so many places before the phrase, the nearest being 1.</summary>
    public string Before(int back) => Clause[At - back];

    /// <summary>The word so many places after the phrase, the nearest being 1.</summary>
    public string After(int ahead) => Clause[At + Count - 1 + ahead];
}
