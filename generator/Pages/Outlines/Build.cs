namespace CareSheets.Pages.Outlines;

/// <summary>
/// The build of a kind of fish as builds.csv draws it, in percent of the length with the tail: across
/// from the snout, down from the axis of the body.
/// </summary>
/// <param name="Depth">Of the body as drawn; nothing where the drawing is never stretched.</param>
/// <param name="Eye">Across, down, half its width.</param>
internal sealed record Build(string Name, double? Depth, (double X, double Y, double Radius) Eye, DrawnPath Path)
{
    private static readonly Dictionary<string, Build> Known = Read();

    /// <summary>All that are drawn, each once.</summary>
    public static IEnumerable<Build> All => Known.Values.Distinct();

    /// <summary>The drawing of the first of the names, from near to far, that has one.</summary>
    /// <param name="names">Taxa, the closest first; last the shape of the body, which always has one.</param>
    public static Build Of(params IEnumerable<string> names) =>
        Known[names.First(Known.ContainsKey)];

    private static Dictionary<string, Build> Read() =>
        Names.DataFile.Rows("builds.csv").Select(cells => (Whose: cells[1], Made: Make(cells)))
            .SelectMany(row => row.Whose.Split(' ').Select(whose => (Whose: whose.Replace('_', ' '), row.Made)))
            .ToDictionary(pair => pair.Whose, pair => pair.Made, StringComparer.Ordinal);

    private static Build Make(string[] cells)
    {
        var eye = cells[3].Split(' ').Select(DrawnPath.Number).ToArray();
        return new Build(cells[0], cells[2].Length == 0 ? null : DrawnPath.Number(cells[2]), (eye[0], eye[1], eye[2]),
            DrawnPath.Parse(cells[4]));
    }
}
