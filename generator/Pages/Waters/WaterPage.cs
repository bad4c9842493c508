namespace CareSheets.Pages.Waters;

/// <summary>
/// Sums on water for customers. The scripts do them; without, each is explained and its table stands there.
/// </summary>
/// <param name="Cautions">What no sum can say.</param>
public sealed record WaterPage(
    string Address, PageFrame Frame, string Heading, string Lead, string NoScript,
    IReadOnlyList<string> Cautions, IReadOnlyList<WaterSum> Sums, IReadOnlyList<string> Sources) : IPage
{
    public string Template => "water";

    public required string SourcesHeading { get; init; }
}

/// <summary>One sum: its explanation, its fields, its tables.</summary>
/// <param name="Caution">What to mind with fresh water; empty where none is poured in.</param>
/// <param name="Answer">Called out when the answer changes, for those who listen.</param>
public sealed record WaterSum(
    string Id, string Heading, string Lead, string Caution, string Answer, IReadOnlyList<WaterInput> Inputs,
    IReadOnlyList<RecordTable> Tables)
{
    /// <summary>What opens the reasons of an answer that begins with an order; empty where nothing is folded.</summary>
    public string Behind { get; init; } = "";
}

/// <param name="Dimension">Its key in the data; empty for plain numbers.</param>
/// <param name="Unit">None for pH and plain numbers.</param>
public sealed record WaterInput(string Id, string Label, string Dimension, Mates.UnitSelect? Unit);
