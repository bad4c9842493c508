namespace CareSheets.Pages.Mates;

/// <summary>
/// A need that a group unites, as a table: each species has a state, two states make a third, and
/// each state has its words. So scripts unite lids, bottoms and flow without knowing what they are.
/// </summary>
internal sealed record Fold(
    string Label, IReadOnlyList<int> Of, IReadOnlyList<string> Words, IReadOnlyList<IReadOnlyList<int>> Table)
{
    /// <param name="label">What it is called.</param>
    /// <param name="states">One for each species.</param>
    /// <param name="unite">Associative and commutative.</param>
    /// <param name="words">What a state is called.</param>
    public static Fold Make<T>(string label, IReadOnlyList<T> states, Func<T, T, T> unite, Func<T, string> words)
        where T : notnull
    {
        var known = states.Distinct().ToList();
        for (var i = 0; i < known.Count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                if (!known.Contains(unite(known[i], known[j])))
                    known.Add(unite(known[i], known[j]));
            }
        }
        return new Fold(
            label, [.. states.Select(s => known.IndexOf(s))], [.. known.Select(words)],
            [.. known.Select(one => (IReadOnlyList<int>)[.. known.Select(two => known.IndexOf(unite(one, two)))])]);
    }
}
