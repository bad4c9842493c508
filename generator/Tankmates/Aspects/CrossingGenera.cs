using System.Collections.Frozen;

namespace CareSheets.Tankmates.Aspects;

/// <summary>
/// Genera whose species are known in the trade to cross in tanks, from crossing-genera.csv. A genus
/// that is not listed has not been reported to us; that is no proof that its species never cross.
/// </summary>
internal static class CrossingGenera
{
    private static readonly FrozenSet<string> Names = Read();

    public static bool Contains(string genus) => Names.Contains(genus);

    private static FrozenSet<string> Read()
    {
        using var stream = typeof(CrossingGenera).Assembly.GetManifestResourceStream("crossing-genera.csv")
            ?? throw new InvalidOperationException("crossing-genera.csv is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Skip(1).Select(line => line.Split(',')[0]).ToFrozenSet();
    }
}
