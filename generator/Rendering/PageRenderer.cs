using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Pages.Cards;
using CareSheets.Pages.Stock;
using Scriban.Runtime;
using Scriban.Syntax;

namespace CareSheets.Rendering;

/// <summary>
/// A page record to the text of its file: its own template, then the frame around it. Records are
/// seen by templates with names in lower case and underscores.
/// </summary>
public sealed class PageRenderer
{
    private readonly Theme _theme;
    private readonly ScriptObject _words = [];

    public PageRenderer(Theme theme, Words words)
    {
        _theme = theme;
        foreach (var (name, text) in words.Group("page"))
            _words[name] = text;
        _words.IsReadOnly = true;
    }

    /// <summary>Nothing when a template fails; then the bag says where.</summary>
    public string? Render(IPage page, DiagnosticBag bag)
    {
        var isPaper = page is HomeSheet or TankCard or CardLeaves or Docket or TalkingNotes;
        var frame = page is CardLeaves ? "frames/sheets.html" : page is TankCard ? "frames/leaf.html"
            : isPaper ? "frames/paper.html" : "frames/page.html";
        var own = (isPaper ? "papers/" : "pages/") + page.Template + ".html";
        var inner = RenderTemplate(own, page, null, bag);
        return inner is null
            ? null
            : RenderTemplate(frame, page, new Html(inner), bag);
    }

    private string? RenderTemplate(string name, IPage page, Html? content, DiagnosticBag bag)
    {
        if (!_theme.Templates.TryGetValue(name, out var template))
        {
            bag.Add(TemplateCodes.NoTemplate, SourceSpan.None, ("name", name));
            return null;
        }
        var model = new ScriptObject { ["page"] = page, ["word"] = _words };
        if (content is not null)
            model["content"] = content;
        var context = new EscapingContext(_theme);
        context.PushGlobal(model);
        try
        {
            return template.Render(context);
        }
        catch (ScriptRuntimeException failure)
        {
            bag.Add(TemplateCodes.Failed, TemplateSpan.Of(failure.Span),
                ("reason", $"{failure.OriginalMessage} ({page.Address})"));
            return null;
        }
    }
}
