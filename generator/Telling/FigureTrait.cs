using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Telling;

/// <summary>A figure in which species can be held against one another.</summary>
/// <param name="Of">The figure of an entry; nothing where it is not stated so that it compares.</param>
internal sealed record FigureTrait(string Topic, Func<Entry, TraitValue?> Of)
{
    /// <summary>Lengths compare on one basis only, and nearly all entries state the total length.</summary>
    public static readonly IReadOnlyList<FigureTrait> All =
    [
        new("length", e => e.Adult.Length.Value is { Basis: LengthBasis.Total } length ? High(length) : null),
        new("life", e => High(e.Adult.LifeSpan?.Value)),
        new("temperature", e => Middle(Keep(e, "temperature"))),
        new("ph", e => Middle(Keep(e, "ph"))),
        new("hardness", e => High(Keep(e, "hardness"))),
        new("group", e => new TraitValue(e.Company.Group.Value, null)),
        new("tank", e => High(e.Tank.Volume.Value)),
    ];

    private static StatedRange? Keep(Entry entry, string field) =>
        entry.Range(field)?.Of(RangeKind.Keep) is { Evidence.IsOwn: true } keep ? keep.Range.Value : null;

    private static TraitValue? High(StatedRange? range) =>
        range?.High is { } high ? new TraitValue(high, range) : null;

    private static TraitValue? Middle(StatedRange? range) =>
        range is { Low: { } low, High: { } high } ? new TraitValue((low + high) / 2, range) : null;
}
