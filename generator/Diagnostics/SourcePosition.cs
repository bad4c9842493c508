namespace CareSheets.Diagnostics;

/// <summary>A place in a text: line and column, both counted from 1, columns in UTF-16 units.</summary>
public readonly record struct SourcePosition(int Line, int Column) : IComparable<SourcePosition>
{
    public static readonly SourcePosition Start = new(1, 1);

    public int CompareTo(SourcePosition other) =>
        Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);

    /// <summary>The position <paramref name="columns"/> further on in the same line.</summary>
    public SourcePosition Right(int columns) => this with { Column = Column + columns };

    public static bool operator <(SourcePosition left, SourcePosition right) => left.CompareTo(right) < 0;

    public static bool operator >(SourcePosition left, SourcePosition right) => left.CompareTo(right) > 0;

    public static bool operator <=(SourcePosition left, SourcePosition right) => left.CompareTo(right) <= 0;

    public static bool operator >=(SourcePosition left, SourcePosition right) => left.CompareTo(right) >= 0;
}
