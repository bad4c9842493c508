namespace CareSheets.Paper;

/// <summary>Sizes of type: a point is a 72nd of an inch of 25.4 mm.</summary>
public static class Points
{
    public static double ToMillimetres(double points) => points * 25.4 / 72;
}
