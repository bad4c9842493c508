namespace CareSheets.Water.Bags;

/// <summary>What has to be said beside an advice.</summary>
public enum BagCaution
{
    /// <summary>Un-ionised ammonia is above what harms while the bag is still closed.</summary>
    HarmsNow,

    /// <summary>The step of pH from bag to tank is larger than the limit.</summary>
    AcidityApart,

    /// <summary>The bag is colder or warmer than the limit allows: float it first.</summary>
    WarmthApart,

    /// <summary>Some figures were not measured, and the outcomes are spans.</summary>
    NotMeasured,

    /// <summary>An airstone drives CO₂ out. Always said.</summary>
    NoAirstone,

    /// <summary>No controlled comparison of fast and slow transfer was found. Always said.</summary>
    SourcesDisagree,
}
