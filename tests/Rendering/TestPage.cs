using CareSheets.Pages;

namespace CareSheets.Tests.Rendering;

/// <summary>A page with one text and one piece of markup, for templates written in a test.</summary>
public sealed record TestPage(string Text, Html Markup, IReadOnlyList<string> Items) : IPage
{
    public string Template => "test";

    public string Address => "test.html";

    public LatinText Sentence => new(Text);

    public PageFrame Frame { get; } = new("en", "title", "", "", "shop", "place", "", [], true);

    public static TestPage With(string text) => new(text, new Html("<b>ready</b>"), ["one", "two"]);
}
