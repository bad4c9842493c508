using System.Collections.Frozen;
using System.Globalization;
using CareSheets.Quantities.Units;

namespace CareSheets.Quantities;

/// <summary>
/// A kind of quantity the shop writes down, with every unit it may be written in.
/// </summary>
public sealed class Dimension
{
    private readonly FrozenDictionary<string, Unit> _bySpelling;
    private readonly Unit _metric;
    private readonly Unit _us;

    /// <param name="key">As the schema names it.</param>
    /// <param name="units">The canonical unit first.</param>
    /// <param name="metric">Shown to metric readers.</param>
    /// <param name="us">Shown to US readers.</param>
    internal Dimension(string key, IReadOnlyList<Unit> units, Unit metric, Unit us)
    {
        (Key, Units, _metric, _us) = (key, units, metric, us);
        var spellings =
            from unit in units
            from plain in unit.Spellings.Select(Spelling.Plain).Distinct()
            select (plain, unit);
        _bySpelling = spellings.ToFrozenDictionary(pair => pair.plain, pair => pair.unit);
    }

    public string Key { get; }

    public IReadOnlyList<Unit> Units { get; }

    /// <summary>The unit all figures are computed in.</summary>
    public Unit Canonical => Units[0];

    /// <summary>A place on a scale (temperature, pH): two may be subtracted, never added.</summary>
    public bool IsPoint { get; init; }

    /// <summary>A bare number is complete: true of pH alone.</summary>
    public bool UnitOptional { get; init; }

    /// <summary>Lowest possible value in the canonical unit, inclusive.</summary>
    public double Minimum { get; init; }

    /// <summary>Highest possible value in the canonical unit, inclusive.</summary>
    public double Maximum { get; init; } = double.MaxValue;

    /// <summary>
    /// Above this canonical value a bare number was surely meant in the US unit: 78 is °F.
    /// Serves only to suggest a unit to the writer, never to assume one.
    /// </summary>
    public double MetricUpTo { get; init; } = double.MaxValue;

    /// <summary>A unit in which a bare number may as well have been meant, so that both are suggested.</summary>
    public Unit? OrPerhaps { get; init; }

    public IReadOnlyList<AmbiguousUnit> Ambiguous { get; init; } = [];

    /// <summary>A text in the right form, to show to a writer who is lost.</summary>
    public required string Example { get; init; }

    /// <summary>
    /// The unit so spelled, or none; look-alike signs, case and spaces do not matter.
    /// </summary>
    public Unit? Find(string spelling) => _bySpelling.GetValueOrDefault(Spelling.Plain(spelling));

    /// <summary>The unit shown to these readers; for both, the metric one.</summary>
    public Unit For(UnitSystem system) => system switch
    {
        UnitSystem.Both or UnitSystem.Metric => _metric,
        UnitSystem.US => _us,
    };

    /// <summary>Whether a canonical value exists at all; not whether it is plausible.</summary>
    public bool IsPossible(double canonical) =>
        double.IsFinite(canonical) && canonical >= Minimum && canonical <= Maximum;

    public override string ToString() => Key;

    internal AmbiguousUnit? FindAmbiguous(string spelling)
    {
        var plain = Spelling.Plain(spelling);
        return Ambiguous.FirstOrDefault(
            doubt => doubt.Spellings.Any(typed => Spelling.Plain(typed) == plain));
    }

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or outside the limits.</exception>
    internal double Require(double canonical) => IsPossible(canonical)
        ? canonical
        : throw new ArgumentOutOfRangeException(nameof(canonical), canonical, $"No such {Key}.");

    /// <summary>For debuggers and test output; readers see <see cref="QuantityFormat"/>.</summary>
    internal string Describe(double canonical) =>
        string.Create(CultureInfo.InvariantCulture, $"{canonical:R} {Canonical.Symbol}").TrimEnd();
}
