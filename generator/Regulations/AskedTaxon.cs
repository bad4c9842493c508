using CareSheets.Names;
using CareSheets.Species;

namespace CareSheets.Regulations;

/// <summary>
/// A taxon to look for in the lists: all names it goes by, and what is known of its place above the
/// genus. A list may name it by any of these.
/// </summary>
/// <param name="Names">The valid name first, then former ones; a name on a box is the only one.</param>
/// <param name="Family">Nothing where it is not known.</param>
/// <param name="Order">Nothing where it is not known.</param>
public sealed record AskedTaxon(IReadOnlyList<AskedName> Names, string? Family, string? Order)
{
    public static AskedTaxon Of(Entry entry) => new(
        [
            .. entry.FormerNames.Select(n => n.Value).Prepend(entry.OriginalName.Value)
                .Prepend(entry.ScientificName.Value).Select(AskedName.Of).Distinct(),
        ],
        entry.Family.Value, entry.Order.Value);

    /// <summary>A name that has no entry, as on a packing list.</summary>
    public static AskedTaxon Of(ScientificName name, string? family = null, string? order = null) =>
        new([AskedName.Of(name)], family, order);

    /// <summary>A genus whose species nobody has told, as in "Channa sp.".</summary>
    public static AskedTaxon OfGenus(string genus, string? family = null, string? order = null) =>
        new([new AskedName(genus, null)], family, order);
}

/// <summary>A name to look for; without an epithet it means some species of the genus.</summary>
public sealed record AskedName(string Genus, string? Epithet)
{
    public static AskedName Of(ScientificName name) => new(name.Genus, name.Epithet);

    public override string ToString() => Epithet is null ? Genus : $"{Genus} {Epithet}";
}
