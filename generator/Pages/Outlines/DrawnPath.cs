using System.Globalization;
using System.Text;

namespace CareSheets.Pages.Outlines;

/// <summary>SVG path data of moves, lines and curves in absolute figures, which can be stretched.</summary>
internal sealed record DrawnPath(IReadOnlyList<string> Steps)
{
    public static DrawnPath Parse(string data) => new(data.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The highest and lowest figures down; a curve's own reach may be a little less.</summary>
    public (double Top, double Bottom) Reach
    {
        get
        {
            var downs = Steps.Where(IsNumber).Select(Number).Where((_, i) => i % 2 == 1).ToList();
            return (downs.Min(), downs.Max());
        }
    }

    public string Moved(Func<double, double> across, Func<double, double> down)
    {
        var text = new StringBuilder();
        var isAcross = true;
        foreach (var step in Steps)
        {
            if (!IsNumber(step))
            {
                text.Append(step);
                continue;
            }
            text.Append(Text(isAcross ? across(Number(step)) : down(Number(step)))).Append(' ');
            isAcross = !isAcross;
        }
        return text.ToString();
    }

    public static string Text(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    private static bool IsNumber(string step) => !char.IsAsciiLetter(step[0]);

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
