namespace CareSheets.Species;

/// <summary>How long the shop watches new fish before it sells them.</summary>
/// <param name="Source">Where the number comes from, in words.</param>
public sealed record Observation(int Days, string Source)
{
    /// <summary>
    /// Where store.yaml is silent. Shops watch new fish for 14 to 30 days; a longer watch for a
    /// known parasite is a vet's word.
    /// </summary>
    public static readonly Observation Usual = new(14, "common practice, no source");
}
