namespace CareSheets.Diagnostics;

/// <summary>The beginning of somebody's text, short enough for a message.</summary>
public static class Excerpt
{
    private const int Longest = 60;

    public static string Of(string text) => text.Length <= Longest ? text : text[..(Longest - 3)] + "...";
}
