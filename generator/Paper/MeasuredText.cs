namespace CareSheets.Paper;

/// <summary>A text in one or more faces, with the width of whatever lies between two of its signs.</summary>
internal sealed class MeasuredText
{
    private readonly IReadOnlyList<TypeRun> _runs;

    /// <summary>Units of the type that stand before each sign, and before the end.</summary>
    private readonly double[] _before;

    public MeasuredText(IReadOnlyList<TypeRun> runs)
    {
        _runs = runs;
        Text = string.Concat(runs.Select(r => r.Text));
        _before = new double[Text.Length + 1];
        var at = 0;
        foreach (var run in runs)
        {
            foreach (var rune in run.Text.EnumerateRunes())
            {
                var next = at + rune.Utf16SequenceLength;
                // The second half of a letter that takes two is never where a line begins.
                Array.Fill(_before, _before[at] + FaceWidths.Units(run.Face, rune), at + 1, next - at);
                at = next;
            }
        }
    }

    public string Text { get; }

    /// <summary>In the unit of the size, without spaces at the end.</summary>
    public double Width(int from, int to, double size) =>
        FaceWidths.Sized(_before[TrimEnd(from, to)] - _before[from], size);

    public int TrimEnd(int from, int to)
    {
        while (to > from && char.IsWhiteSpace(Text[to - 1]))
            to--;
        return to;
    }

    public int TrimStart(int from, int to)
    {
        while (from < to && char.IsWhiteSpace(Text[from]))
            from++;
        return from;
    }

    /// <summary>What lies between two signs, in its faces.</summary>
    public IReadOnlyList<TypeRun> Runs(int from, int to)
    {
        var parts = new List<TypeRun>();
        var start = 0;
        foreach (var run in _runs)
        {
            var (first, last) = (Math.Max(from, start), Math.Min(to, start + run.Text.Length));
            if (first < last)
                parts.Add(run with { Text = Text[first..last] });
            start += run.Text.Length;
        }
        return parts;
    }
}
