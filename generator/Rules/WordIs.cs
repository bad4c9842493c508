using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>A field of one word is one of these.</summary>
public sealed record WordIs(string Field, IReadOnlyList<string> Words) : Condition
{
    public override Truth Judge(EntryFields entry) => entry.Words(Field) is [var word, ..]
        ? Connective.Of(Words.Contains(word.Value)) : Truth.Open;

    public override IEnumerable<string> Fields => [Field];
}

/// <summary>A list has at least one of these. A list that is not stated has nothing.</summary>
public sealed record ListHas(string Field, IReadOnlyList<string> Words) : Condition
{
    public override Truth Judge(EntryFields entry) =>
        Connective.Of(entry.Words(Field).Any(w => Words.Contains(w.Value)));

    public override IEnumerable<string> Fields => [Field];
}

/// <summary>A field is there at all. This is never open.</summary>
public sealed record IsStated(string Field) : Condition
{
    public override Truth Judge(EntryFields entry) => Connective.Of(entry[Field] is not null);

    public override IEnumerable<string> Fields => [Field];
}
