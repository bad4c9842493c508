namespace CareSheets.Quantities;

/// <summary>A unit a writer may use for one dimension, and how to compute with it.</summary>
/// <remarks>
/// canonical = (figure − <see cref="Zero"/>) × <see cref="Times"/> ÷ <see cref="Over"/>.
/// The key names it within its dimension, for data files and messages; the symbol is what readers
/// see, empty for pH; the system tells whose readers need no translation of it. Of the spellings,
/// case, spaces, full stops and hyphens do not matter.
/// </remarks>
public sealed record Unit(
    string Key, string Symbol, UnitSystem System, IReadOnlyList<string> Spellings)
{
    /// <summary>Where the canonical zero lies on this unit's scale: 32 for °F.</summary>
    public double Zero { get; init; }

    public double Times { get; init; } = 1;

    /// <summary>
    /// Kept apart from <see cref="Times"/> so that definitions stay as published
    /// (÷ 1.8, grains per gallon) and 77 °F is 25 °C to the last bit.
    /// </summary>
    public double Over { get; init; } = 1;

    /// <summary>
    /// Understood, but everyday to neither system: an imperial gallon, a Clark degree.
    /// </summary>
    public bool IsAlwaysTranslated { get; init; }

    /// <summary>
    /// The step to which people round ordinary figures in this unit (common practice).
    /// </summary>
    public required double Step { get; init; }

    /// <summary>
    /// Finer steps for small things and coarser for large, ascending; may be empty.
    /// </summary>
    public IReadOnlyList<StepFrom> Steps { get; init; } = [];

    public double ToCanonical(double v) => (v - Zero) * Times / Over;

    public double FromCanonical(double v) => (v * Over / Times) + Zero;

    public bool Serves(UnitSystem system) => system switch
    {
        UnitSystem.Both => true,
        UnitSystem.Metric or UnitSystem.US =>
            !IsAlwaysTranslated && (System == UnitSystem.Both || System == system),
    };

    /// <summary>
    /// The step for a figure of this size, which is <see cref="Step"/> unless listed.
    /// </summary>
    public double StepAt(double figure)
    {
        var step = Steps.Count == 0 ? Step : Steps[0].Step;
        foreach (var next in Steps)
        {
            step = Math.Abs(figure) >= next.From ? next.Step : step;
        }

        return step;
    }
}
