namespace CareSheets.Diagnostics;

/// <summary>What a diagnostic means for the run.</summary>
public enum Severity
{
    /// <summary>Only told in the report.</summary>
    Note,

    /// <summary>Shown and counted; the site is still written.</summary>
    Warning,

    /// <summary>The site is not written.</summary>
    Error,
}
