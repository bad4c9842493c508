using System.Globalization;
using CareSheets.Diagnostics;
using CareSheets.Quantities;
using CareSheets.Species;

namespace CareSheets.Proofing.Coded;

/// <summary>
/// A tank is at least three lengths of the grown fish long, two wide and one high, each length measured
/// to the base of the tail fin.
/// </summary>
/// <remarks>
/// The sides are those that the Swiss Animal Protection Ordinance (SR 455.1), Annex 2, Table 8, asks for the
/// longest fish; here they are a rule of thumb, wherever the shop is. A total length holds at least 1.14
/// standard lengths (five species, morphometric table of the FishXing help file), so only a tank too
/// small by that too is told of.
/// </remarks>
internal sealed class RoomForTheGrown : ICodedRule
{
    public static readonly CodedText Text = new(
        "tank-has-room-for-the-grown-fish", Severity.Warning,
        "The tank is small for the grown fish", "Ask for a larger tank.",
        "Three lengths without the tail by two by one is the least that one country's law asks for",
        "Swiss Animal Protection Ordinance SR 455.1, Annex 2, Table 8");

    private const double LeastTotalOverStandard = 1.14;

    public string Name => Text.Name;

    public IEnumerable<Breach> Check(Entry entry)
    {
        var length = entry.Adult.Length.Value;
        var standard = length.High / (length.Basis == LengthBasis.Standard ? 1 : LeastTotalOverStandard);
        (string Side, Sourced<StatedRange>? Stated, int Times)[] sides =
            [("length", entry.Tank.Length, 3), ("width", entry.Tank.Width, 2), ("height", entry.Tank.Height, 1)];
        foreach (var (side, stated, times) in sides)
        {
            if (stated?.Value.High is { } has && standard is { } body && has < times * body)
                yield return Text.Breach(entry, stated.Span, $"tank.{side}",
                    $"its {side} is {stated.Value.Text}, " +
                    $"{Number(times * body)} cm are {times} lengths without the tail",
                    new RelatedSpan(entry.Adult.Length.Span, $"grown length {length.Text}"));
        }
    }

    private static string Number(double value) => Math.Ceiling(value).ToString("0", CultureInfo.InvariantCulture);
}
