namespace CareSheets.Regulations;

/// <summary>What a list does to a species that it names, the strictest first.</summary>
public enum RegulationEffect
{
    /// <summary>Keeping, selling or importing is forbidden, unless the authority says otherwise.</summary>
    Prohibited,

    /// <summary>Only with a permit, licence or notification.</summary>
    Permit,

    /// <summary>Trade across borders is controlled, as by an appendix of CITES.</summary>
    Trade,
}
