using System.Collections.Frozen;

namespace CareSheets.Names.Speech;

/// <summary>How long the second-last vowel of a word is, by the endings in latin-quantities.csv.</summary>
internal static class LatinQuantities
{
    private static readonly FrozenDictionary<string, bool> LongByEnding =
        DataFile.Rows("latin-quantities.csv").ToFrozenDictionary(row => row[0], row => row[1] == "long");

    private static readonly int LongestEnding = LongByEnding.Keys.Max(e => e.Length);

    /// <summary>Nothing when no ending of the table fits.</summary>
    public static bool? IsPenultLong(string word)
    {
        for (var length = Math.Min(LongestEnding, word.Length); length > 1; length--)
        {
            if (LongByEnding.TryGetValue(word[^length..], out var isLong))
                return isLong;
        }
        return null;
    }
}
