namespace CareSheets.Paper;

/// <summary>How a paper stands: on its short side or on its long one.</summary>
public enum Orientation
{
    Portrait,
    Landscape,
}
