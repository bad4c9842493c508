using CareSheets.Diagnostics;

namespace CareSheets.Arrivals;

/// <summary>What one supplier sent on one day, and what became of it.</summary>
public sealed record Arrival
{
    /// <summary>File name without its ending: <c>2026-11-24-larkwater-imports</c>. Papers have it too.</summary>
    public required string Name { get; init; }

    public required Sourced<string> Supplier { get; init; }

    public required Sourced<DateOnly> Date { get; init; }

    /// <summary>File name of the supplier's packing list.</summary>
    public Sourced<string>? List { get; init; }

    /// <summary>When the bags were closed, in the shop's own time.</summary>
    public Sourced<DateTime>? Packed { get; init; }

    public Sourced<DateTime>? Opened { get; init; }

    public IReadOnlyList<MeasuredBag> Bags { get; init; } = [];

    /// <summary>In the order of the list; never empty.</summary>
    public required IReadOnlyList<Batch> Batches { get; init; }

    /// <summary>The measured bag that stands for a batch: that of its tank, else that of its system.</summary>
    public MeasuredBag? BagOf(Batch batch) =>
        Bags.OrderBy(b => b.Tank is null).FirstOrDefault(b => b.IsFor(batch));

    /// <summary>Hours that a bag was closed: its own figure, else from packing to opening.</summary>
    public double? HoursClosed(MeasuredBag? bag) =>
        bag?.Hours ?? (Packed is { } packed && Opened is { } opened && opened.Value > packed.Value
            ? (opened.Value - packed.Value).TotalHours
            : null);
}
