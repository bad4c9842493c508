namespace CareSheets.Pages;

/// <summary>
/// One care range as a reader sees it: the keep range in both unit systems, a bar, the other kinds
/// of range, and where the figures come from.
/// </summary>
/// <param name="First">The range as the writer stated it.</param>
/// <param name="Second">The same in the other unit system, or empty where there is no other.</param>
/// <param name="Bar">Nothing where there is no keep range.</param>
public sealed record RangeRow(
    string Label,
    string First,
    string Second,
    RangeBar? Bar,
    IReadOnlyList<KindLine> OtherKinds,
    string Evidence)
{
    /// <summary>The evidence as it is printed.</summary>
    public LatinText Told => new(Evidence);

    /// <summary>Nobody stated it: relatives say so.</summary>
    public bool IsEstimated { get; init; }

    /// <summary>To the label's own line among the words explained, if it has one.</summary>
    public Link? Explained { get; init; }

    /// <summary>The evidence in two or three words, for papers; empty where the range is stated.</summary>
    public string Brief { get; init; } = "";
}

/// <summary>Another kind of range in words: <c>wild 7.3</c>.</summary>
public sealed record KindLine(string Kind, string First, string Second, string Evidence)
{
    /// <summary>Only survived, for a time: no advice on how to keep the fish.</summary>
    public bool IsOnlySurvived { get; init; }
}

/// <summary>
/// A picture of a range on its scale. Positions are ready percentages of the scale's width, such
/// as <c>37.5</c>; an open end runs to the end of the scale and is marked open.
/// </summary>
public sealed record RangeBar(
    string Start,
    string Width,
    string InnerStart,
    string InnerWidth,
    bool HasInner,
    bool IsOpenLow,
    bool IsOpenHigh,
    string ScaleLow,
    string ScaleHigh,
    string Description)
{
    /// <summary>Drawn as a broken outline, so that it is told from a stated range in black and white.</summary>
    public bool IsEstimated { get; init; }
}
