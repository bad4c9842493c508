using CareSheets.Collection;
using CareSheets.Species;

namespace CareSheets.Relatives;

/// <summary>
/// What to do about a value that does not fit one or two species of its genus. Between so few, nobody can tell
/// which is the odd one: each is named, and what sets their waters apart is told as a reason why all may be right.
/// </summary>
internal static class FewRelatives
{
    /// <summary>Beyond these, the others of a genus outvote one (our choice, no source).</summary>
    public const int Most = 2;

    private const string Usual = "Correct it, or, if it is right, say so";

    private static bool Are(Relations relations) =>
        relations.Rank == TaxonRank.Genus && relations.Nearest.Count <= Most;

    /// <summary>The advice, up to where the entry says that the value is right.</summary>
    public static string Advice(Outlier outlier)
    {
        if (!Are(outlier.Relations))
            return Usual;
        var others = outlier.Relations.Nearest;
        var names = string.Join(" and ", others.Select(o => $"{o.Entry.ScientificName.Value} ({o.Stated.Value.Text})"));
        var states = others.Count == 1 ? "states" : "state";
        return $"Of its genus only {names} {states} it, so any of them may be the odd one. " +
            string.Concat(others.Select(o => outlier.Figure.IsSize ? "" : Apart(outlier.Entry, o.Entry))) +
            "Look at each, correct what is wrong, or, if this is right, say so";
    }

    /// <summary>A reason in the kinds of water that the two entries tell of, where they tell of others.</summary>
    private static string Apart(Entry entry, Entry other)
    {
        var (own, others) = (Waters(entry), Waters(other));
        var name = other.ScientificName.Value;
        return !IsTold(entry) || !IsTold(other) ? ""
            : others.Except(own).ToList() is { Count: > 0 } more
                ? $"{name} lives in {string.Join(" and ", more)} by its entry, this one does not, which may be why. "
            : own.Except(others).ToList() is { Count: > 0 } mine
                ? $"This one lives in {string.Join(" and ", mine)} by its entry, {name} does not, which may be why. "
            : "";
    }

    private static bool IsTold(Entry entry) => entry.Origin.Habitats.Count > 0 || IsSalty(entry);

    private static bool IsSalty(Entry entry) => entry.Range("salinity") is not null;

    private static List<string> Waters(Entry entry) =>
    [
        .. HabitatKind.All.Where(k => k.IsOf(entry.Origin.Habitats.Select(h => h.Value))).Select(k => k.Name)
            .Concat(IsSalty(entry) ? ["brackish water"] : []).Distinct()
            .Select(kind => kind == "rift lake" ? "a rift lake" : kind),
    ];
}
