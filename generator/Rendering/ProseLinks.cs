using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Pages;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace CareSheets.Rendering;

/// <summary>
/// Gives the links of a prose their addresses: <c>danio-rerio.md</c> or <c>danio-rerio</c> to an entry,
/// today's or a former name; <c>word:blackwater</c> to the glossary; https: and mailto: as they are.
/// </summary>
internal sealed class ProseLinks(SpeciesCollection collection, EntryProse prose, DiagnosticBag bag)
{
    private const string WordScheme = "word:";

    public void Resolve(MarkdownDocument document)
    {
        foreach (var automatic in document.Descendants<AutolinkInline>().ToList())
            Check(automatic);
        foreach (var link in document.Descendants<LinkInline>().ToList())
        {
            if (link.IsImage)
                Refuse(link, LinkCodes.Picture, ("target", link.Url ?? ""));
            else
                link.Url = Address(link);
        }
    }

    private string Address(LinkInline link)
    {
        var target = link.Url ?? "";
        if (IsOfTheWeb(target))
            return target;
        if (target.StartsWith(WordScheme, StringComparison.Ordinal))
            return Word(link, target[WordScheme.Length..]);
        return target.Contains(':', StringComparison.Ordinal) || target.Contains('/', StringComparison.Ordinal)
            ? Refuse(link, LinkCodes.RefusedLink, ("target", Excerpt.Of(target)))
            : Species(link, target);
    }

    private string Species(LinkInline link, string target)
    {
        var name = target.EndsWith(".md", StringComparison.Ordinal) ? target[..^3] : target;
        if (collection.Find(name) is { } entry)
            return Routes.Between(Routes.Species(prose.Entry), Routes.Species(entry));
        if (collection.Known.Drafts.Contains(name))
            return Refuse(link, LinkCodes.LinkToDraft, ("name", name));
        if (collection.Known.Unread.Contains(name))
            return "#"; // its own mistakes have been told; no page is written
        var known = collection.Known.Entries.Concat(collection.FormerNames.Keys);
        return Refuse(link, LinkCodes.NoSuchEntry,
            ("name", Excerpt.Of(name)), ("suggestion", CollectionLinker.Suggest(name, known)));
    }

    private string Word(LinkInline link, string key)
    {
        if (collection.Known.Terms?.Contains(key) != false)
            return $"{Routes.Between(Routes.Species(prose.Entry), Routes.Glossary)}#{key}";
        return Refuse(link, LinkCodes.NoSuchTerm, ("name", Excerpt.Of(key)),
            ("suggestion", CollectionLinker.Suggest(key, collection.Known.Terms)));
    }

    /// <summary>A refused link points nowhere, so that even a page shown in spite of it is harmless.</summary>
    private string Refuse(LinkInline link, DiagnosticCode code, params (string, string)[] values)
    {
        bag.Add(code, prose.Span(link.Line, link.Column, link.Span.Length), values);
        return link.Url = "#";
    }

    private void Check(AutolinkInline link)
    {
        if (link.IsEmail || IsOfTheWeb(link.Url))
            return;
        var span = prose.Span(link.Line, link.Column, link.Span.Length);
        bag.Add(LinkCodes.RefusedLink, span, ("target", Excerpt.Of(link.Url)));
        link.Url = "#";
    }

    private static bool IsOfTheWeb(string target) =>
        target.StartsWith("https://", StringComparison.OrdinalIgnoreCase) ||
        target.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase);
}
