using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Rendering;
using ThemeOfTest = CareSheets.Rendering.Theme;

namespace CareSheets.Tests.Rendering;

/// <summary>Renders a template that a test has written, with a frame that adds nothing.</summary>
internal static class TemplateDesk
{
    public static PageRenderer Renderer(string template, params (string Path, string Text)[] parts)
    {
        var texts = parts.Append(("pages/test.html", template)).Append(("frames/page.html", "{{ content }}"))
            .Select(p => KeyValuePair.Create(p.Item1, p.Item2));
        var words = new Dictionary<string, string> { ["page.hello"] = "Hello & <welcome>" };
        return new PageRenderer(ThemeOfTest.FromTexts(texts), new Words(words, "words.yaml"));
    }

    public static string Render(string template, string text = "", params (string Path, string Text)[] parts)
    {
        var bag = new DiagnosticBag();
        var rendered = Renderer(template, parts).Render(TestPage.With(text), bag);
        Assert.True(rendered is not null, string.Join('\n', bag.Sorted().Select(d => d.Message)));
        return rendered;
    }

    /// <summary>What is told of a template that must fail.</summary>
    public static Diagnostic Failure(string template, params (string Path, string Text)[] parts)
    {
        var bag = new DiagnosticBag();
        Assert.Null(Renderer(template, parts).Render(TestPage.With("x"), bag));
        return Assert.Single(bag.Sorted());
    }
}
