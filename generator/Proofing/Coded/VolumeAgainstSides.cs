using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>The three sides of a tank and its volume say the same: 1 L is 1,000 cm³.</summary>
internal sealed class VolumeAgainstSides : ICodedRule
{
    public static readonly CodedText Text = new(
        "volume-agrees-with-sides", Severity.Error,
        "The volume of the tank is not that of its sides", "Correct whichever is wrong.",
        "Length times width times height in cm, divided by 1,000, are litres; 3 % are left for rounding",
        "arithmetic");

    private const double Margin = 0.03;

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        var tank = entry.Tank;
        if (tank.Width is not { } width || tank.Height is not { } height)
            yield break;
        var litres = tank.Length.Value.High * width.Value.High * height.Value.High / 1000;
        if (litres is not { } sides || tank.Volume.Value.High is not { } volume ||
            Math.Abs(volume - sides) <= Margin * sides)
            yield break;
        yield return Text.Breach(entry, tank.Volume.Span, "tank.volume",
            $"{tank.Volume.Value.Text} beside {sides.ToString("0", CultureInfo.InvariantCulture)} L",
            new RelatedSpan(tank.Length.Span, $"{tank.Length.Value.Text} × {width.Value.Text} × {height.Value.Text}"));
    }
}
