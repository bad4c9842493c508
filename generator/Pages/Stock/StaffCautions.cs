using CareSheets.Species;

namespace CareSheets.Pages.Stock;

/// <summary>What staff must know of a species before they put a hand into its bag, the weightiest first.</summary>
internal static class StaffCautions
{
    public static IReadOnlyList<string> Of(Entry entry) => [.. entry.Cautions.Select(c => c.Value)];
}
