using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>
/// A figure that relatives are asked about, as the schema declares it: a care range, or a size
/// of fish or tank.
/// </summary>
public sealed record ComparedFigure(CareRangeDeclaration Declaration, bool IsSize)
{
    /// <summary>Its name in the entry: a care range by its field, a size by its path.</summary>
    public string Field => Declaration.Field;

    /// <summary>
    /// Tanks are chosen from a few sizes on sale: they tell something about a fish, but an unusual one
    /// is no slip.
    /// </summary>
    public bool IsAudited => !Field.StartsWith("tank.", StringComparison.Ordinal);

    /// <summary>Where in the entry it stands, for diagnostics.</summary>
    public string Path => IsSize ? Field : $"care.{Field}";

    public static IReadOnlyList<ComparedFigure> All(FigureDeclarations figures) =>
    [
        .. figures.Ranges.Where(r => r.ComparedAmongRelatives).Select(r => new ComparedFigure(r, false)),
        .. figures.Sizes.Where(s => s.ComparedAmongRelatives).Select(s => new ComparedFigure(s, true)),
    ];

    /// <summary>
    /// What an entry states from evidence of its own, or nothing. Lengths of fish count in total
    /// length only: another basis is another quantity, and is never converted.
    /// </summary>
    public Sourced<StatedRange>? Own(Entry entry)
    {
        if (!IsSize)
            return entry.Range(Field)?.Of(RangeKind.Keep) is { Evidence.IsOwn: true } keep ? keep.Range : null;
        var size = Size(entry);
        return entry.Evidence.IsOwn && size?.Value.Basis is null or LengthBasis.Total ? size : null;
    }

    private Sourced<StatedRange>? Size(Entry entry) => Field switch
    {
        "adult.length" => entry.Adult.Length,
        "tank.length" => entry.Tank.Length,
        "tank.volume" => entry.Tank.Volume,
        _ => null,
    };
}
