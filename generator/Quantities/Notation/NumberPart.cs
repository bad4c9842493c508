namespace CareSheets.Quantities.Notation;

/// <summary>A figure as typed, with the digits that go unchanged into the tidy text.</summary>
internal sealed record NumberPart(int Index, int End, string Digits, double Value)
{
    public int Length => End - Index;
}
