using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Rules;

/// <summary>Something that may hold of an entry, as a rule's file says it in words.</summary>
public abstract record Condition
{
    public abstract Truth Judge(EntryFields entry);

    /// <summary>Paths of the fields it looks at, in the order in which they are written.</summary>
    public abstract IEnumerable<string> Fields { get; }

    /// <summary>Paths of the fields that keep it from holding; all it looks at where that can't be said.</summary>
    public virtual IEnumerable<string> Against(EntryFields entry) => Fields;

    /// <summary>The words of the entry's texts on which it holds, or fails to hold, each at its place.</summary>
    public virtual IEnumerable<Quote> Quotes(EntryFields entry) => [];
}

/// <summary>Words of an entry's text with their place.</summary>
/// <param name="Field">The path of the field that says them.</param>
public sealed record Quote(string Field, string Words, SourceSpan Span);

/// <summary>Holds when every part does; without parts, always.</summary>
public sealed record AllOf(IReadOnlyList<Condition> Parts) : Condition
{
    public override Truth Judge(EntryFields entry) => Connective.All(Parts.Select(p => p.Judge(entry)));

    public override IEnumerable<string> Fields => Parts.SelectMany(p => p.Fields);

    public override IEnumerable<string> Against(EntryFields entry) =>
        Parts.Where(p => p.Judge(entry) == Truth.No).SelectMany(p => p.Against(entry));

    public override IEnumerable<Quote> Quotes(EntryFields entry)
    {
        var holds = Judge(entry) == Truth.Yes;
        return Parts.Where(p => holds || p.Judge(entry) == Truth.No).SelectMany(p => p.Quotes(entry));
    }
}

/// <summary>Holds when at least one part does; without parts, never.</summary>
public sealed record AnyOf(IReadOnlyList<Condition> Parts) : Condition
{
    public override Truth Judge(EntryFields entry) => Connective.Any(Parts.Select(p => p.Judge(entry)));

    public override IEnumerable<string> Fields => Parts.SelectMany(p => p.Fields);

    public override IEnumerable<Quote> Quotes(EntryFields entry) =>
        Parts.Where(p => p.Judge(entry) == Truth.Yes).SelectMany(p => p.Quotes(entry));
}

/// <summary>Holds when no part does.</summary>
public sealed record NoneOf(IReadOnlyList<Condition> Parts) : Condition
{
    public override Truth Judge(EntryFields entry) =>
        Connective.Not(Connective.Any(Parts.Select(p => p.Judge(entry))));

    public override IEnumerable<string> Fields => Parts.SelectMany(p => p.Fields);

    public override IEnumerable<Quote> Quotes(EntryFields entry) =>
        Parts.Where(p => p.Judge(entry) == Truth.Yes).SelectMany(p => p.Quotes(entry));
}
