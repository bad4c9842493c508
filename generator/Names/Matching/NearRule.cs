namespace CareSheets.Names.Matching;

/// <summary>
/// When two words count as near, by the thresholds of Rees 2014 (PLoS ONE 9(9): e107510): their phonetic
/// keys agree, or few letters differ for their length and the beginnings agree.
/// </summary>
internal static class NearRule
{
    /// <summary>Blocks of two letters may change places.</summary>
    public const int LongestBlock = 2;

    private const int MostInGenus = 3;
    private const int MostInEpithet = 4;
    private const int MostInBinomen = 4;
    private const int MostInTrinomen = 6;

    public static int Distance(string a, string b) => BlockDistance.Between(a, b, LongestBlock);

    public static bool Genera(SoundedWord a, SoundedWord b) => Genera(a, b, Distance(a.Text, b.Text));

    public static bool Genera(SoundedWord a, SoundedWord b, int distance) =>
        a.Key == b.Key ||
        distance <= MostInGenus && Math.Min(a.Text.Length, b.Text.Length) > 2 * distance &&
        (distance < 2 || a.Text[0] == b.Text[0]);

    public static bool Epithets(SoundedWord a, SoundedWord b) => Epithets(a, b, Distance(a.Text, b.Text));

    public static bool Epithets(SoundedWord a, SoundedWord b, int distance) =>
        a.Key == b.Key ||
        distance <= MostInEpithet && Math.Min(a.Text.Length, b.Text.Length) >= 2 * distance &&
        (distance < 2 || a.Text[0] == b.Text[0]) &&
        (distance < 4 || string.CompareOrdinal(a.Text, 0, b.Text, 0, 3) == 0);

    public static bool IsWithin(int total, int epithets) =>
        total <= (epithets > 1 ? MostInTrinomen : MostInBinomen);
}
