namespace CareSheets.Quantities;

/// <summary>Between which two points a fish was measured.</summary>
public enum LengthBasis
{
    /// <summary>TL: snout to the end of the tail fin.</summary>
    Total,

    /// <summary>SL: snout to the base of the tail fin.</summary>
    Standard,

    /// <summary>DW: across the disc of a ray.</summary>
    DiscWidth,
}
