using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>Which figure of the entry a quantity in its prose is about.</summary>
internal enum ProseKind
{
    Temperature,
    Acidity,
    GeneralHardness,
    CarbonateHardness,
    Salinity,
    Length,
    TankLength,
    TankVolume,
    Group,
    LifeSpan,
}

/// <summary>How far a quantity in prose goes.</summary>
internal enum ProseBound
{
    /// <summary>It is as stated.</summary>
    Exact,

    /// <summary>No more than that.</summary>
    AtMost,

    /// <summary>No less than that.</summary>
    AtLeast,

    /// <summary>Everything beyond, as in "warm rooms above 30 °C".</summary>
    Beyond,

    /// <summary>What lies above does harm, as in "above 30 °C it gasps".</summary>
    HarmAbove,

    /// <summary>What lies below does harm.</summary>
    HarmBelow,
}

/// <summary>A quantity in the prose of an entry that is about the keeping of its own species.</summary>
/// <param name="Low">In the canonical unit of the kind.</param>
/// <param name="Start">Its place in the text.</param>
internal sealed record ProseQuantity(
    ProseKind Kind, double Low, double High, ProseBound Bound, int Start, int Length)
{
    /// <summary>Of a figure of the water: the kind of range it speaks of.</summary>
    public RangeKind Range { get; init; } = RangeKind.Keep;

    /// <summary>It is about a season: what the species survives may be meant, where the entry says that.</summary>
    public bool OfASeason { get; init; }

    /// <summary>It is about males or about females alone.</summary>
    public bool OfOneSex { get; init; }
}
