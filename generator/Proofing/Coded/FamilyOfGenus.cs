using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// The family of an entry is the one in which the program's list of genera has its genus, and the order that of the
/// family. The list may be older than the shop's knowledge, so a waiver settles it.
/// </summary>
internal sealed class FamilyOfGenus : ICodedRule
{
    public const string RuleName = "family-is-that-of-the-genus";

    public string Name => RuleName;

    public IEnumerable<Breach> Check(Entry entry)
    {
        if (GenusTable.Known.Find(entry.Genus) is not { } known ||
            !entry.Family.Value.EndsWith("idae", StringComparison.Ordinal)) // of another form the schema has told
            yield break;
        if (known.Family != entry.Family.Value)
            yield return Tell(entry, entry.Genus, entry.Family, known.Family, "family");
        else if (known.Order != entry.Order.Value)
            yield return Tell(entry, entry.Family.Value, entry.Order, known.Order, "order");
    }

    private static Breach Tell(Entry entry, string taxon, Sourced<string> here, string listed, string path) =>
        new(RuleName, entry, Diagnostic.Of(NomenclatureCodes.OtherParent, here.Span,
            ("taxon", Excerpt.Of(taxon)), ("here", Excerpt.Of(here.Value)), ("listed", listed), ("rule", RuleName))
            .At(path));
}
