using System.Net;
using System.Text.RegularExpressions;
using CareSheets.Collection;
using CareSheets.Diagnostics;
using CareSheets.Rendering;
using CareSheets.Species;

namespace CareSheets.Tests.Content;

/// <summary>The words of one entry's prose as a customer reads them on paper: no markup, no links.</summary>
internal sealed partial record ProseWords(string Name, IReadOnlyList<string> Words)
{
    public static IReadOnlyList<ProseWords> Of(SpeciesCollection collection)
    {
        var renderer = new ProseRenderer(collection);
        return [.. collection.Entries.Select(e => Of(e, renderer))];
    }

    /// <param name="name">The entry that the text belongs to.</param>
    /// <param name="markup">Its prose as the renderer gives it.</param>
    public static ProseWords FromMarkup(string name, string markup)
    {
        var text = WebUtility.HtmlDecode(Tag().Replace(markup, "")).Replace('’', '\'');
        return new(name, [.. Word().Matches(text).Select(m => m.Value.ToLowerInvariant())]);
    }

    /// <summary>The same text with the words of another laid over its beginning.</summary>
    public ProseWords WithBeginning(IEnumerable<string> words)
    {
        var planted = words.ToList();
        return this with { Words = [.. planted, .. Words.Skip(planted.Count)] };
    }

    private static ProseWords Of(Entry entry, ProseRenderer renderer)
    {
        var prose = renderer.Render(entry, new DiagnosticBag());
        Assert.NotNull(prose);
        return FromMarkup(entry.Name, prose.ForPaper.Markup);
    }

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    /// <summary>Letters and digits; a hyphen or an apostrophe inside a word belongs to it.</summary>
    [GeneratedRegex(@"[\p{L}\p{N}]+(?:['-][\p{L}\p{N}]+)*")]
    private static partial Regex Word();
}
