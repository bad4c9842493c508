namespace CareSheets.Paper;

/// <summary>The three faces that cards are set in.</summary>
public enum Face
{
    Plain,

    Bold,

    /// <summary>The italic of scientific names.</summary>
    Latin,
}
