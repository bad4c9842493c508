using System.Collections.Frozen;
using CareSheets.Names;

namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Genera whose species are known in the trade to cross in tanks, from crossing-genera.csv. A genus
/// that is not listed has not been reported to us; that is no proof that its species never cross.
/// </summary>
internal static class CrossingGenera
{
    private static readonly FrozenSet<string> Known =
        DataFile.Rows("crossing-genera.csv").Select(row => row[0]).ToFrozenSet();

    public static bool Contains(string genus) => Known.Contains(genus);
}
