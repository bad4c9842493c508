using CareSheets.Diagnostics;
using Scriban;

namespace CareSheets.Rendering;

/// <summary>
/// A theme as read: parsed templates by their path in the theme, such as <c>parts/range-row.html</c>.
/// Templates are parsed once and shared by all pages.
/// </summary>
public sealed class Theme
{
    private static readonly string[] TemplateFolders = ["frames", "pages", "papers", "parts"];

    private Theme(Dictionary<string, Template> templates) => Templates = templates;

    internal IReadOnlyDictionary<string, Template> Templates { get; }

    /// <summary>Reads all templates; each mistake in one is told at its line.</summary>
    public static Theme Read(string folder, DiagnosticBag bag)
    {
        var templates = new Dictionary<string, Template>();
        foreach (var part in TemplateFolders)
        {
            var inside = Path.Combine(folder, part);
            if (!Directory.Exists(inside))
                continue;
            foreach (var path in Directory.GetFiles(inside, "*.html").Order(StringComparer.Ordinal))
            {
                var name = $"{part}/{Path.GetFileName(path)}";
                templates[name] = Parse(path, Path.Combine(folder, name).Replace('\\', '/'), bag);
            }
        }
        return new Theme(templates);
    }

    /// <summary>A theme of templates given as text, by path.</summary>
    public static Theme FromTexts(IEnumerable<KeyValuePair<string, string>> texts) =>
        new(texts.ToDictionary(t => t.Key, t => Template.Parse(t.Value, t.Key)));

    private static Template Parse(string path, string shown, DiagnosticBag bag)
    {
        var text = File.ReadAllText(path).ReplaceLineEndings("\n");
        var template = Template.Parse(text, shown);
        foreach (var message in template.Messages.Where(m => m.Type == Scriban.Parsing.ParserMessageType.Error))
            bag.Add(TemplateCodes.Syntax, TemplateSpan.Of(message.Span), ("reason", message.Message));
        return template;
    }
}
