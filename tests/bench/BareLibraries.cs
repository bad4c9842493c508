using CareSheets.Pages;
using CareSheets.Pages.Cards;
using Markdig;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using YamlDotNet.RepresentationModel;

namespace CareSheets.Bench;

/// <summary>
/// The least that any program with these libraries has to do for the same outcome: read each entry, parse its
/// YAML, render its prose, fill the same templates from the same page records, and write as many files.
/// Nothing is checked, linked, compared, escaped or read again.
/// </summary>
internal sealed class BareLibraries(string theme, IReadOnlyDictionary<string, string> words)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();

    private readonly Dictionary<string, Template> _templates = Directory
        .GetFiles(theme, "*.html", SearchOption.AllDirectories)
        .ToDictionary(p => Path.GetRelativePath(theme, p).Replace('\\', '/'), p => Template.Parse(File.ReadAllText(p)));

    public void Run(string content, string into, IReadOnlyList<IPage> pages)
    {
        var prose = Directory.GetFiles(Path.Combine(content, "species")).AsParallel().Sum(p => Read(p).Length);
        pages.AsParallel().ForAll(page =>
        {
            var path = Path.Combine(into, page.Address);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var paper = page is HomeSheet or TankCard;
            var inner = Render($"{(paper ? "papers" : "pages")}/{page.Template}.html", page, "");
            var frame = page is TankCard ? "leaf" : paper ? "paper" : "page";
            File.WriteAllText(path, Render($"frames/{frame}.html", page, inner));
        });
        if (prose == 0)
            throw new InvalidOperationException("There was no prose.");
    }

    private string Render(string name, IPage page, string content)
    {
        var model = new ScriptObject { ["page"] = page, ["content"] = content };
        var word = new ScriptObject();
        foreach (var (key, text) in words.Where(w => w.Key.StartsWith("page.", StringComparison.Ordinal)))
            word[key["page.".Length..]] = text;
        model["word"] = word;
        var context = new TemplateContext { LimitToString = 0, LoopLimit = 0, TemplateLoader = new None() };
        foreach (var (path, template) in _templates)
            context.CachedTemplates[path] = template;
        context.PushGlobal(model);
        return _templates[name].Render(context);
    }

    private static string Read(string path)
    {
        var parts = File.ReadAllText(path).Split("\n---\n", 2);
        var yaml = new YamlStream();
        yaml.Load(new StringReader(parts[0]));
        return Markdown.ToHtml(parts[1], Pipeline);
    }

    private sealed class None : ITemplateLoader
    {
        public string GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) => templateName;

        public string Load(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
            throw new InvalidOperationException(templatePath);

        public ValueTask<string?> LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
            throw new InvalidOperationException(templatePath);
    }
}
