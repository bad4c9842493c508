namespace CareSheets.Names;

/// <summary>How far apart two words are, for "did you mean".</summary>
public static class EditDistance
{
    /// <summary>
    /// Optimal string alignment distance: insertions, deletions, substitutions and swaps of
    /// neighbours, none edited twice (Damerau 1964, Commun. ACM 7:171-176; restricted form).
    /// Time and memory grow with the product of the two lengths.
    /// </summary>
    public static int Between(string a, string b)
    {
        var distance = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            distance[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            distance[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
                distance[i, j] = Cheapest(distance, a, b, i, j);
        }
        return distance[a.Length, b.Length];
    }

    /// <summary>
    /// The candidate nearest to a word, or nothing when none is within a third of its length:
    /// farther ones would be guesses. Ties go to the first in ordinal order.
    /// </summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        const int longest = 80;
        if (word.Length > longest)
            return null;
        var limit = Math.Max(1, word.Length / 3);
        return candidates
            .Where(c => Math.Abs(c.Length - word.Length) <= limit)
            .Select(c => (Candidate: c, Distance: Between(word.ToLowerInvariant(), c.ToLowerInvariant())))
            .Where(c => c.Distance <= limit)
            .OrderBy(c => c.Distance).ThenBy(c => c.Candidate, StringComparer.Ordinal)
            .Select(c => c.Candidate)
            .FirstOrDefault();
    }

    private static int Cheapest(int[,] distance, string a, string b, int i, int j)
    {
        var cost = a[i - 1] == b[j - 1] ? 0 : 1;
        var best = Math.Min(
            Math.Min(distance[i - 1, j] + 1, distance[i, j - 1] + 1), distance[i - 1, j - 1] + cost);
        var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.Min(best, distance[i - 2, j - 2] + 1) : best;
    }
}
