namespace CareSheets.Quantities.Notation;

/// <summary>Some characters of a text and where they stand in it.</summary>
internal sealed record TextPart(int Index, string Text)
{
    public int End => Index + Text.Length;
}
