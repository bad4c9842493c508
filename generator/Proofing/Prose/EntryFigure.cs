using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>The figure of an entry that a quantity in its prose is held against.</summary>
/// <param name="Low">In the canonical unit; nothing where the range is open below.</param>
/// <param name="High">In the canonical unit; nothing where the range is open above.</param>
/// <param name="Label">As messages name it.</param>
/// <param name="Text">As the entry writes it.</param>
internal sealed record EntryFigure(double? Low, double? High, string Label, string Text, SourceSpan Span)
{
    /// <summary>Where the species does best, if the entry says so: a limit may be meant for that.</summary>
    public EntryFigure? Best { get; init; }

    /// <summary>Nothing where the entry is silent: then there is nothing to disagree with.</summary>
    public static EntryFigure? Of(Entry entry, ProseQuantity quantity) => quantity.Kind switch
    {
        ProseKind.Temperature => Water(entry, "temperature", Kind(entry, quantity)),
        ProseKind.Acidity => Water(entry, "ph", quantity.Range),
        ProseKind.GeneralHardness => Water(entry, "hardness", quantity.Range),
        ProseKind.CarbonateHardness => Water(entry, "carbonateHardness", quantity.Range),
        ProseKind.Salinity => Water(entry, "salinity", quantity.Range),
        ProseKind.Length => Size(entry.Adult.Length, "the grown length"),
        ProseKind.TankLength => Size(entry.Tank.Length, "the length of the tank"),
        ProseKind.TankVolume => Size(entry.Tank.Volume, "the volume of the tank"),
        ProseKind.LifeSpan => entry.Adult.LifeSpan is { } span ? Size(span, "the life span") : null,
        ProseKind.Group => Group(entry.Company.Group),
    };

    private static RangeKind Kind(Entry entry, ProseQuantity quantity) =>
        quantity.OfASeason && entry.Range("temperature")?.Of(RangeKind.Survives) is not null
            ? RangeKind.Survives : quantity.Range;

    private static EntryFigure? Water(Entry entry, string field, RangeKind kind)
    {
        if (entry.Range(field) is not { } range || range.Of(kind) is not { } stated)
            return null;
        var label = kind == RangeKind.Keep
            ? range.Declaration.Label : $"{range.Declaration.Label} ({kind.ToString().ToLowerInvariant()})";
        var best = kind == RangeKind.Keep ? range.Of(RangeKind.Prefers)?.Range : null;
        return Size(stated.Range, label) is { } figure
            ? figure with { Best = best is null ? null : Size(best, label) } : null;
    }

    /// <summary>What has no place stands in for a figure that the entry lacks.</summary>
    private static EntryFigure? Size(Sourced<StatedRange> stated, string label) => stated.Span.IsNone
        ? null : new(stated.Value.Low, stated.Value.High, label, stated.Value.Text, stated.Span);

    private static EntryFigure? Group(Sourced<int> group) => group.Span.IsNone ? null : new(
        group.Value, null, "the group", $"at least {group.Value.ToString(CultureInfo.InvariantCulture)}", group.Span);
}
