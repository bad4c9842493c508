using CareSheets.Diagnostics;

namespace CareSheets.Species;

/// <summary>Where a species lives by nature (Darwin Core terms). Never inferred from relatives.</summary>
/// <param name="CountryCodes">ISO 3166-1 alpha-2.</param>
public sealed record Origin(
    IReadOnlyList<Sourced<string>> CountryCodes,
    IReadOnlyList<Sourced<string>> WaterBodies,
    Sourced<string>? Locality,
    IReadOnlyList<Sourced<string>> Habitats);
