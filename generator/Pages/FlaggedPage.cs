namespace CareSheets.Pages;

/// <summary>For staff: every value that does not fit what relatives say, with a picture of them.</summary>
public sealed record FlaggedPage(
    string Address, PageFrame Frame, string Heading, string Lead, string Count, Link Record,
    IReadOnlyList<FlaggedValue> Values) : IPage
{
    public string Template => "flagged";
}

/// <param name="Said">The value beside what relatives foretell, in a sentence.</param>
/// <param name="Chance">That it may be chance, or empty.</param>
/// <param name="Slip">What may have happened, or empty.</param>
/// <param name="Accepted">The writer's reason, or empty.</param>
public sealed record FlaggedValue(
    string Label, Link Species, string VernacularName, string Said, string Chance, string Slip, string Accepted,
    KinPicture Picture);

/// <summary>Ranges of relatives as bars, one under the other, with the value in question among them.</summary>
/// <param name="Height">Of the whole picture, in pixels.</param>
/// <param name="Description">The whole picture in words.</param>
public sealed record KinPicture(int Height, IReadOnlyList<KinBar> Bars, string Description);

/// <param name="TextY">Where its line of text stands, in pixels.</param>
/// <param name="Start">Percent of the picture's width.</param>
public sealed record KinBar(string Name, string Figures, int TextY, int BarY, string Start, string Width, bool IsThis);
