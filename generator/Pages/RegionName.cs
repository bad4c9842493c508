namespace CareSheets.Pages;

/// <summary>A region's name: the theme's where it has one, else that of the United Nations.</summary>
internal static class RegionName
{
    public static string Of(string region, Words words) => words.Or($"region.{region}", region);
}
