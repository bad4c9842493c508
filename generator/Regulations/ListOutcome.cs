namespace CareSheets.Regulations;

/// <summary>What looking for a taxon in one list came to. None of these means that it is allowed.</summary>
public enum OutcomeKind
{
    /// <summary>The list names it, or a group that it belongs to.</summary>
    Listed,

    /// <summary>It could not be looked up: ask the authority.</summary>
    NotChecked,

    /// <summary>The list names its group and leaves this one out.</summary>
    Excepted,

    /// <summary>The list, as far as the shop has it, does not name it.</summary>
    NotFound,
}

/// <summary>Why a taxon could not be looked up.</summary>
public enum UncheckedReason
{
    /// <summary>The names of the list are not here.</summary>
    NamesNotHere,

    /// <summary>The list names its group with exceptions that are not here.</summary>
    ExceptionsNotHere,

    /// <summary>The list names families or orders, and the taxon's own are not known.</summary>
    FamilyUnknown,

    /// <summary>The list names species of the genus, and which species this is has not been told.</summary>
    SpeciesUnknown,
}

/// <param name="Rule">The line of the list that named it or its group.</param>
/// <param name="Name">The name by which the line was met: its own, a former one, its family.</param>
/// <param name="Reason">Why it was not checked, if so.</param>
public sealed record ListOutcome(
    RegulationList List, OutcomeKind Kind, RegulationRule? Rule, string Name, UncheckedReason? Reason)
{
    /// <summary>Worst first; then by list, so that two runs agree.</summary>
    internal static int WorstFirst(ListOutcome one, ListOutcome other)
    {
        var kind = one.Kind.CompareTo(other.Kind);
        if (kind != 0)
            return kind;
        var effect = (one.Rule?.Effect ?? default).CompareTo(other.Rule?.Effect ?? default);
        if (effect != 0)
            return effect;
        var clause = string.CompareOrdinal(one.Rule?.Clause, other.Rule?.Clause);
        return clause != 0 ? clause : string.CompareOrdinal(one.List.Key, other.List.Key);
    }
}
