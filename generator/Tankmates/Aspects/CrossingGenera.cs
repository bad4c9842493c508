using CareSheets.Names;

namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Genera whose species are known in the trade to cross in tanks, from crossing-genera.csv. A genus
/// that is not listed has not been reported to us; that is no proof that its species never cross.
/// </summary>
internal static class CrossingGenera
{
    /// <summary>Genera that cross among each other have the same number.</summary>
    private static readonly Dictionary<string, int> Known = DataFile.Rows("crossing-genera.csv")
        .SelectMany((row, number) => row[0].Split(' ').Select(genus => (genus, number)))
        .ToDictionary(g => g.genus, g => g.number);

    /// <summary>Whether two species may cross, by their genera, which may be the same.</summary>
    public static bool Cross(string one, string other) =>
        Known.TryGetValue(one, out var here) && Known.TryGetValue(other, out var there) && here == there;
}
