namespace CareSheets.Names.Matching;

/// <summary>
/// Edit distance in which neighbouring blocks of equal length may change places at the cost of their
/// length, each letter being edited once (modified Damerau-Levenshtein distance: Boehmer and Rees
/// 2008, as used by Rees 2014). Blocks of one letter give <see cref="EditDistance"/>.
/// </summary>
internal static class BlockDistance
{
    /// <param name="longestBlock">0 allows no swaps.</param>
    public static int Between(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int longestBlock)
    {
        var width = b.Length + 1;
        var cells = (a.Length + 1) * width;
        Span<int> distance = cells <= 1024 ? stackalloc int[cells] : new int[cells];
        for (var j = 0; j <= b.Length; j++)
            distance[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            distance[i * width] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                var best = Math.Min(
                    Math.Min(distance[(i - 1) * width + j] + 1, distance[i * width + j - 1] + 1),
                    distance[(i - 1) * width + j - 1] + cost);
                for (var block = 1; block <= longestBlock && 2 * block <= Math.Min(i, j); block++)
                {
                    if (IsSwapped(a, b, i, j, block))
                        best = Math.Min(best, distance[(i - 2 * block) * width + j - 2 * block] + block);
                }
                distance[i * width + j] = best;
            }
        }
        return distance[cells - 1];
    }

    private static bool IsSwapped(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int i, int j, int block) =>
        a.Slice(i - 2 * block, block).SequenceEqual(b.Slice(j - block, block)) &&
        a.Slice(i - block, block).SequenceEqual(b.Slice(j - 2 * block, block));
}
