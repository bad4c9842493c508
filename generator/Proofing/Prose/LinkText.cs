using System.Text.RegularExpressions;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Proofing.Prose;

/// <summary>
/// Brackets and parentheses that were meant for a link and are none: an address with a blank in it, a blank before
/// the address, or a link in a caution, which is plain text. All of that would be printed as it stands.
/// </summary>
internal static partial class LinkText
{
    public static IEnumerable<Diagnostic> Check(Entry entry, SpeciesNames names)
    {
        var prose = ProseText.OfProse(entry);
        foreach (Match link in Link().Matches(entry.Prose.Markdown))
        {
            if (IsMeant(link, names) && !IsOne(link))
                yield return Describe(prose.Place(link.Index, link.Length), link, "prose", Right(link, names));
        }
        foreach (var caution in entry.Cautions)
        {
            var place = ProseText.OfField(caution, entry.Name);
            foreach (Match link in Link().Matches(caution.Value))
                yield return Describe(place.Place(link.Index, link.Length), link, "cautions",
                    $"Links stand in the prose; here write {link.Groups["text"].Value} alone.");
        }
    }

    /// <summary>After a blank, parentheses hold a remark more often than an address.</summary>
    private static bool IsMeant(Match link, SpeciesNames names)
    {
        var address = link.Groups["address"].Value;
        return link.Groups["gap"].Length == 0 || address.EndsWith(".md", StringComparison.Ordinal) ||
            address.Contains(':', StringComparison.Ordinal) || names.HasEntry(Slug.From(address));
    }

    /// <summary>A title in quotes may follow the address: <c>[text](address "title")</c>.</summary>
    private static bool IsOne(Match link) => link.Groups["gap"].Length == 0 &&
        Address().IsMatch(link.Groups["address"].Value);

    private static string Right(Match link, SpeciesNames names)
    {
        var slug = Slug.From(link.Groups["address"].Value.Replace(".md", "", StringComparison.Ordinal));
        return names.HasEntry(slug)
            ? $"Write [{link.Groups["text"].Value}]({slug}.md)."
            : "An address has no space in it, and stands right after the bracket: [zebra danio](danio-rerio.md).";
    }

    private static Diagnostic Describe(SourceSpan span, Match link, string path, string suggestion) =>
        Diagnostic.Of(LinkCodes.NoLink, span, ("text", Excerpt.Of(link.Value)), ("suggestion", suggestion)).At(path);

    [GeneratedRegex(
        @"\[(?<text>[^\[\]\n]{1,80})\](?<gap> ?)\((?<address>[^()\n]{1,200})\)", RegexOptions.NonBacktracking)]
    private static partial Regex Link();

    [GeneratedRegex(@"^\s*(<[^<>\n]*>|[^\s<]\S*)(\s+(""[^""]*""|'[^']*'))?\s*$", RegexOptions.NonBacktracking)]
    private static partial Regex Address();
}
