using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using CareSheets.Species;
using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace CareSheets.Rendering;

/// <summary>
/// An entry's Markdown to markup. HTML in it is printed as text, links lead to entries, glossary
/// words or the web, and everything else about them is told as a mistake with its line.
/// </summary>
public sealed class ProseRenderer(SpeciesCollection collection)
{
    /// <summary>
    /// Single extensions only: the bundle of all would let attributes, frames and inline styles through.
    /// </summary>
    private static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePreciseSourceLocation().DisableHtml().Build();

    public SpeciesProse? Render(Entry entry, DiagnosticBag bag)
    {
        var prose = new EntryProse(entry);
        try
        {
            var document = Markdown.Parse(entry.Prose.Markdown, Pipeline);
            Shift(document);
            new ProseLinks(collection, prose, bag).Resolve(document);
            WarnOfHtml(prose, document, bag);
            var forPage = ToHtml(document);
            RemoveLinks(document);
            return new SpeciesProse(forPage, ToHtml(document))
            {
                Paragraphs = [.. document.Select(block => new PaperParagraph(ToHtml(block), ToText(block)))],
            };
        }
        catch (ArgumentException failure) when (failure.Message.Contains("nested", StringComparison.Ordinal))
        {
            // Markdig gives up on text nested too deeply with this exception alone.
            bag.Add(LinkCodes.UnreadableProse, entry.Prose.Start, ("reason", failure.Message.Split(" - ")[0]));
            return null;
        }
    }

    /// <summary>The page has its one main heading and its section; prose begins below both.</summary>
    private static void Shift(MarkdownDocument document)
    {
        foreach (var heading in document.Descendants<HeadingBlock>())
            heading.Level = Math.Min(heading.Level + 2, 6);
    }

    /// <summary>Tags are told from ordinary "smaller than" signs by the name that follows.</summary>
    private static void WarnOfHtml(EntryProse prose, MarkdownDocument document, DiagnosticBag bag)
    {
        foreach (var literal in document.Descendants<LiteralInline>())
        {
            var at = TagPattern.Tag().Match(literal.Content.ToString());
            if (at.Success)
                bag.Add(LinkCodes.HtmlInProse, prose.Span(literal.Line, literal.Column + at.Index, at.Length));
        }
    }

    private static Html ToHtml(MarkdownObject part)
    {
        using var text = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(text);
        Pipeline.Setup(renderer);
        renderer.Render(part);
        return new Html(text.ToString());
    }

    private static string ToText(MarkdownObject part)
    {
        using var text = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(text)
        {
            EnableHtmlForBlock = false,
            EnableHtmlForInline = false,
            EnableHtmlEscape = false,
        };
        Pipeline.Setup(renderer);
        renderer.Render(part);
        var plain = text.ToString().Trim();
        return part is ParagraphBlock ? plain.Replace('\n', ' ') : plain;
    }

    /// <summary>Paper can't be clicked: each link becomes its text.</summary>
    private static void RemoveLinks(MarkdownDocument document)
    {
        foreach (var automatic in document.Descendants<AutolinkInline>().ToList())
            automatic.ReplaceBy(new LiteralInline(automatic.Url));
        foreach (var link in document.Descendants<LinkInline>().ToList())
        {
            var text = new ContainerInline();
            while (link.FirstChild is { } child)
            {
                child.Remove();
                text.AppendChild(child);
            }
            link.ReplaceBy(text);
        }
    }
}
