namespace CareSheets.Regulations;

/// <summary>How the shop came to know what a law says.</summary>
public enum LegalEvidence
{
    /// <summary>Somebody read the text of the law, or a copy of it.</summary>
    Seen,

    /// <summary>Somebody read a report of it.</summary>
    Secondary,

    /// <summary>Somebody recalls it.</summary>
    FromMemory,
}
