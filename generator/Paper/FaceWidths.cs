using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace CareSheets.Paper;

/// <summary>How wide a text is, measured without asking the machine for its fonts.</summary>
/// <remarks>
/// Widths are those of Liberation Sans, Liberation Sans Bold and Liberation Serif Italic 2.1 (SIL
/// Open Font License), read from their table of horizontal metrics. By design these equal the widths
/// of the sans and the serif that other systems have under the names Arial and Times New Roman.
/// Pairs of letters are not moved together: text is never wider than this but by a hair.
/// </remarks>
public static class FaceWidths
{
    private const double UnitsPerEm = 2048;

    /// <summary>Signs of other scripts are as wide as they are high, or a little wider.</summary>
    private const double Unknown = 2048 * 1.3;

    private static readonly FrozenDictionary<(Face, int), int> Widths = Read().ToFrozenDictionary();

    /// <summary>In the unit of the size.</summary>
    public static double Of(string text, Face face, double size) =>
        text.EnumerateRunes().Sum(rune => Units(face, rune)) * size / UnitsPerEm;

    /// <summary>Whether every letter's width is known; else the text was taken for wider than it is.</summary>
    public static bool KnowsAll(string text, Face face) =>
        text.EnumerateRunes().All(rune => Widths.ContainsKey((face, rune.Value)));

    private static double Units(Face face, Rune rune) =>
        Widths.TryGetValue((face, rune.Value), out var width) ? width
        : Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.Format ? 0
        : Unknown;

    private static IEnumerable<KeyValuePair<(Face, int), int>> Read()
    {
        using var stream = typeof(FaceWidths).Assembly.GetManifestResourceStream("faces.csv")
            ?? throw new InvalidOperationException("faces.csv is missing from the program.");
        using var reader = new StreamReader(stream);
        reader.ReadLine(); // the heading
        while (reader.ReadLine() is { } line)
        {
            var fields = line.Split(',');
            var face = Enum.Parse<Face>(fields[0]);
            var code = int.Parse(fields[1], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            foreach (var width in fields[2].Split(' '))
            {
                if (width != "-")
                    yield return new((face, code), int.Parse(width, CultureInfo.InvariantCulture));
                code++;
            }
        }
    }
}
