using CareSheets.Paper;
using CareSheets.Paper.Layout;

namespace CareSheets.Tests.Browser;

/// <summary>What is wrong with a card as Chromium sets it; nothing when all is well.</summary>
internal static class CardFaults
{
    /// <summary>In mm: rounding, and letters such as f that lean out of their width.</summary>
    private const double Play = 0.6;

    /// <summary>In mm: runs of one line touch, and their boxes are rounded outward to whole pixels.</summary>
    private const double Pixel = 25.4 / 96;

    public static IEnumerable<string> Of(Looked card, PaperSize paper, int number)
    {
        var margin = CardType.MarginOf(paper);
        var texts = card.Texts.Select(t => (t.Text, Box: Letters(t))).ToList();
        foreach (var (text, box) in texts.Where(t => IsOutside(t.Box, paper, margin)))
            yield return $"card {number}: “{text}” stands in the margin: {string.Join(' ', box)}";
        foreach (var box in card.Shapes.Where(b => IsOutside(b, paper, margin)))
            yield return $"card {number}: a shape stands in the margin: {string.Join(' ', box)}";
        for (var i = 0; i < texts.Count; i++)
        {
            foreach (var other in texts.Skip(i + 1).Where(o => Overlap(texts[i].Box, o.Box, Pixel)))
                yield return $"card {number}: “{texts[i].Text}” lies on “{other.Text}”";
            foreach (var shape in card.Shapes.Where(s => Overlap(texts[i].Box, s)))
                yield return $"card {number}: “{texts[i].Text}” lies on a shape";
        }
        foreach (var fault in NearCode(card, texts, number))
            yield return fault;
    }

    /// <summary>Four modules of white around a code, of which the narrowest are 0.4 mm.</summary>
    private static IEnumerable<string> NearCode(
        Looked card, IReadOnlyList<(string Text, double[] Box)> texts, int number)
    {
        const double quiet = QrCode.QuietZone * CodePart.Least;
        for (var i = 0; i < card.Shapes.Length; i++)
        {
            if (card.Wide[i].Length == 0)
                continue;
            var code = card.Shapes[i];
            double[] zone = [code[0] - quiet, code[1] - quiet, code[2], code[3]];
            foreach (var text in texts.Where(t => Overlap(t.Box, zone)))
                yield return $"card {number}: “{text.Text}” stands in the quiet zone";
        }
    }

    /// <summary>From the height of a capital to just under the base line: leading may touch leading.</summary>
    private static double[] Letters(LookedText text)
    {
        var middle = (text.Box[1] + text.Box[3]) / 2;
        return [text.Box[0], middle - (0.42 * text.Size), text.Box[2], middle + (0.42 * text.Size)];
    }

    private static bool IsOutside(double[] box, PaperSize paper, double margin) =>
        box[0] < margin - Play || box[1] < margin - Play ||
        box[2] > paper.Width - margin + Play || box[3] > paper.Height - margin + Play;

    private static bool Overlap(double[] a, double[] b, double across = 0.1) =>
        a[0] + across < b[2] && b[0] + across < a[2] && a[1] + 0.1 < b[3] && b[1] + 0.1 < a[3];
}
