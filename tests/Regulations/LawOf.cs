using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Regulations;

namespace CareSheets.Tests.Regulations;

/// <summary>Made-up lists of law and names to look for in them.</summary>
internal static class LawOf
{
    public static RegulationRule Rule(
        RuleRank rank, string name, RegulationEffect effect = RegulationEffect.Prohibited, string clause = "1") =>
        new(rank, new Sourced<string>(name, SourceSpan.None), [], [], [], false, effect, clause, null);

    public static RegulationList List(string key, string applies, ListExtent extent, params RegulationRule[] rules) =>
        new(key, new Sourced<string>(key, SourceSpan.None), "authority", applies, [applies], extent,
            LegalEvidence.Seen, null, null, 12, "source", null, rules);

    public static RegulationList List(params RegulationRule[] rules) =>
        List("list", RegulationList.Everywhere, ListExtent.Whole, rules);

    public static ListOutcome Ask(RegulationList list, AskedTaxon taxon) =>
        Assert.Single(new RegulationFinder([list], "DE").Of(taxon).Here);

    public static AskedTaxon Fish(
        string name, string? family = "Xidae", string? order = "Xiformes", string[]? former = null) =>
        new([.. (former ?? []).Prepend(name).Select(n => AskedName.Of(ScientificName.Parse(n)!))], family, order);
}
