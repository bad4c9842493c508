namespace CareSheets.Paper.Layout;

/// <summary>Where on a card a part stands, from top to bottom. Its importance is another matter.</summary>
public enum CardPlace
{
    Head,
    Water,
    Size,
    Facts,
    Cautions,
    Foot,

    /// <summary>The lower right, beside whatever else is there.</summary>
    Corner,
}
