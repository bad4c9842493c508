namespace CareSheets.Regulations;

/// <summary>One taxon looked for in one list.</summary>
internal static class ListSearch
{
    /// <summary>
    /// A line that names the taxon without doubt decides; then one whose exceptions are unknown; then
    /// what could not be asked; then an exception; then silence.
    /// </summary>
    public static ListOutcome Ask(RegulationList list, AskedTaxon taxon)
    {
        ListOutcome Outcome(OutcomeKind kind, RegulationRule? rule, string name, UncheckedReason? reason = null) =>
            new(list, kind, rule, name, reason);

        if (list.Extent == ListExtent.None)
            return Outcome(OutcomeKind.NotChecked, null, "", UncheckedReason.NamesNotHere);
        var met = list.Rules.Select(rule => (Rule: rule, Name: NameMet(rule, taxon))).Where(m => m.Name is not null)
            .OrderBy(m => m.Rule.Effect).ThenBy(m => m.Rule.Clause, StringComparer.Ordinal).ToList();
        foreach (var (rule, name) in met.Where(m => !IsExcepted(m.Rule, taxon) && !m.Rule.HasUnknownExceptions))
            return Outcome(OutcomeKind.Listed, rule, name!);
        foreach (var (rule, name) in met.Where(m => !IsExcepted(m.Rule, taxon)))
            return Outcome(OutcomeKind.NotChecked, rule, name!, UncheckedReason.ExceptionsNotHere);
        if (OpenQuestion(list, taxon) is { } reason)
            return Outcome(OutcomeKind.NotChecked, null, "", reason);
        return met.Count > 0
            ? Outcome(OutcomeKind.Excepted, met[0].Rule, met[0].Name!)
            : Outcome(OutcomeKind.NotFound, null, "");
    }

    /// <summary>The name of the taxon by which the line means it, or nothing.</summary>
    private static string? NameMet(RegulationRule rule, AskedTaxon taxon)
    {
        var listed = rule.Also.Prepend(rule.Name.Value).ToList();
        return rule.Rank switch
        {
            RuleRank.Species => First(taxon, name => listed.Exists(l => NameOnList.IsSpecies(name, l))),
            RuleRank.Genus => First(taxon, name => listed.Exists(l => NameOnList.IsGenus(name, l))),
            RuleRank.Family => Group(rule, taxon, taxon.Family, listed),
            RuleRank.Order => Group(rule, taxon, taxon.Order, listed),
        };
    }

    /// <summary>A known family decides; without one, a genus that the list is known to mean by it.</summary>
    private static string? Group(RegulationRule rule, AskedTaxon taxon, string? group, List<string> listed) =>
        group is not null
            ? listed.Contains(group) ? group : null
            : First(taxon, name => rule.Genera.Any(genus => NameOnList.IsGenus(name, genus)));

    private static string? First(AskedTaxon taxon, Func<AskedName, bool> isMeant) =>
        taxon.Names.FirstOrDefault(isMeant)?.ToString();

    /// <summary>An exception counts for the valid name only: an old name may have meant others too.</summary>
    private static bool IsExcepted(RegulationRule rule, AskedTaxon taxon) =>
        rule.Except.Any(listed => NameOnList.Is(taxon.Names[0], listed));

    private static UncheckedReason? OpenQuestion(RegulationList list, AskedTaxon taxon)
    {
        if (list.Rules.Any(r =>
            (r.Rank == RuleRank.Family && taxon.Family is null) || (r.Rank == RuleRank.Order && taxon.Order is null)))
            return UncheckedReason.FamilyUnknown;
        var namesSpeciesOfIt = list.Rules.Where(r => r.Rank == RuleRank.Species)
            .SelectMany(r => r.Also.Prepend(r.Name.Value))
            .Any(listed => taxon.Names.Any(n => n.Epithet is null && NameOnList.IsGenus(n, listed.Split(' ')[0])));
        return namesSpeciesOfIt ? UncheckedReason.SpeciesUnknown : null;
    }
}
