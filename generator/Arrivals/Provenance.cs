namespace CareSheets.Arrivals;

/// <summary>Where the fish of a batch come from, as the supplier says.</summary>
public enum Provenance
{
    Unknown,

    /// <summary>Caught in the wild.</summary>
    Wild,

    /// <summary>Bred by an aquarist or a breeder.</summary>
    Bred,

    /// <summary>Grown on a fish farm.</summary>
    Farmed,
}
