using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// Where width and height of a tank are not stated, its volume leaves it a form that tanks have: were it as wide
/// as high, either would be from a sixth of its length to a quarter more than that.
/// </summary>
/// <remarks>Tanks on sale lie from about a quarter of the length to the whole: common practice, no source.</remarks>
internal sealed class VolumeForLength : ICodedRule
{
    public static readonly CodedText Text = new(
        "volume-suits-the-length", Severity.Warning,
        "A tank of this length does not hold this volume", "Correct whichever is wrong, and look at the units.",
        "Width and height follow from both, and no tank is so narrow or so tall", "arithmetic; common practice");

    private const double Narrowest = 1 / 6.0, Tallest = 1.25;

    /// <summary>Within this a corrected figure is ordinary enough to be named.</summary>
    private const double OrdinaryFrom = 0.25, OrdinaryTo = 0.9;

    private const double CentimetresInAnInch = 2.54;

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        var tank = entry.Tank;
        if ((tank.Width is not null && tank.Height is not null) ||
            tank.Length.Value.High is not { } length || tank.Volume.Value.High is not { } volume)
            yield break;
        var side = Side(length, volume);
        if (side >= Narrowest * length && side <= Tallest * length)
            yield break;
        yield return Text.Breach(entry, tank.Volume.Span, "tank.volume",
            $"{tank.Volume.Value.Text} in {Long(tank.Length.Value, length)} would leave {Number(side)} cm " +
            $"for width and height each{Meant(tank, length, volume)}",
            new RelatedSpan(tank.Length.Span, $"the length is {tank.Length.Value.Text}"));
    }

    /// <summary>In cm, of litres and cm: 1 L is 1,000 cm³.</summary>
    private static double Side(double length, double volume) => Math.Sqrt(volume * 1000 / length);

    private static string Long(StatedRange stated, double length) =>
        stated.Unit.Symbol == "cm" ? stated.Text : $"{stated.Text} ({Number(length)} cm)";

    /// <summary>What a slip of unit or of the decimal point would explain.</summary>
    private static string Meant(Tank tank, double length, double volume)
    {
        var typed = Figure(tank.Length.Value.Unit.FromCanonical(length));
        (string Text, double Length, double Volume)[] slips =
        [
            ($"{typed} cm", length / CentimetresInAnInch, volume),
            ($"{typed} in", length * CentimetresInAnInch, volume),
            ($"{Figure(volume / 10)} L", length, volume / 10),
            ($"{Figure(volume * 10)} L", length, volume * 10),
        ];
        var own = tank.Length.Value.Unit.Symbol;
        var fits = slips
            .Where((slip, i) => i > 1 || !slip.Text.EndsWith($" {own}", StringComparison.Ordinal))
            .Where(slip => Side(slip.Length, slip.Volume) / slip.Length is >= OrdinaryFrom and <= OrdinaryTo)
            .Select(slip => slip.Text).ToList();
        return fits.Count == 0 ? "" : $"; {string.Join(" or ", fits)} would suit the other figure";
    }

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
