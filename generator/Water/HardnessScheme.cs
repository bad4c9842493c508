using CareSheets.Quantities;

namespace CareSheets.Water;

/// <summary>A published way to call waters soft or hard. They disagree, so each is named.</summary>
/// <param name="Key">In the theme's words.</param>
/// <param name="Source">Who calls waters so.</param>
/// <param name="Classes">From soft to hard; each reaches up to, not including, a hardness.</param>
public sealed record HardnessScheme(string Key, string Source, IReadOnlyList<HardnessClass> Classes)
{
    /// <summary>Whole mg/L in print: 60.4 is read as 60, which is soft.</summary>
    public static readonly HardnessScheme Usgs = new(
        "usgs", "US Geological Survey, as quoted in other works",
        [
            new("soft", Milligrams(60.5)), new("moderately_hard", Milligrams(120.5)),
            new("hard", Milligrams(180.5)), new("very_hard", null),
        ]);

    public static readonly HardnessScheme Sanitary = new(
        "sanitary", "Sawyer and McCarty 1967, from memory",
        [
            new("soft", Milligrams(75.5)), new("moderately_hard", Milligrams(150.5)),
            new("hard", Milligrams(300.5)), new("very_hard", null),
        ]);

    /// <summary>Below 1.5, up to 2.5 and above 2.5 mmol/L.</summary>
    public static readonly HardnessScheme German = new(
        "german", "Wasch- und Reinigungsmittelgesetz 2007, § 9, from memory",
        [
            new("soft", GeneralHardness.FromMillimoles(1.5)),
            new("middling", GeneralHardness.FromMillimoles(Math.BitIncrement(2.5))), new("hard", null),
        ]);

    public static IReadOnlyList<HardnessScheme> All => [Usgs, Sanitary, German];

    public HardnessClass ClassOf(GeneralHardness hardness) =>
        Classes.First(c => c.Below is not { } below || hardness < below);

    private static GeneralHardness Milligrams(double figure) => GeneralHardness.FromMilligramsPerLitre(figure);
}
