namespace CareSheets.Quantities.Notation;

/// <summary>Walks once through a text, taking signs, figures and words as they come.</summary>
/// <remarks>
/// Each step moves forward and none looks back further than one character, so time grows with the
/// length of the text whatever it contains.
/// </remarks>
internal sealed class QuantityScanner(string text)
{
    public int Position { get; private set; }

    public bool AtEnd => Position == text.Length;

    private char Current => At(Position);

    public void SkipSpaces()
    {
        while (char.IsWhiteSpace(Current))
        {
            Position++;
        }
    }

    public Bound ReadBound()
    {
        SkipSpaces();
        var (bound, length) = Sign.ReadBound(text.AsSpan(Position));
        Position += length;
        SkipSpaces();
        return bound;
    }

    /// <summary>Takes a dash or the word "to" between two figures.</summary>
    public bool ReadSeparator()
    {
        var length = Sign.IsDash(Current) ? 1 : IsTo(Position) ? 2 : 0;
        Position += length;
        SkipSpaces();
        return length > 0;
    }

    /// <summary>
    /// A figure may begin here: a digit, a point with a digit, either with a minus.
    /// </summary>
    public bool AtNumber() => BeginsNumber(Position);

    /// <summary>Words before the first figure, up to it or to a comparison sign.</summary>
    public TextPart? ReadPrefix()
    {
        var start = Position;
        while (!AtEnd && !AtNumber() && Sign.ReadBound(text.AsSpan(Position)).Length == 0)
        {
            Position++;
        }

        return Part(start);
    }

    /// <summary>Takes all characters that people mean as one figure, well formed or not.</summary>
    public TextPart ReadFigure()
    {
        var start = Position;
        Position += Sign.IsDash(Current) ? 1 : 0;
        while (ContinuesFigure(start))
        {
            Position++;
        }

        return new TextPart(start, text[start..Position]);
    }

    /// <summary>
    /// Everything up to the next figure or separator, without the space around it.
    /// </summary>
    public TextPart? ReadUnit()
    {
        SkipSpaces();
        var start = Position;
        while (!AtEnd && !EndsUnit(start))
        {
            Position++;
        }

        return Part(start);
    }

    private bool EndsUnit(int start)
    {
        // The 3 of CaCO3 belongs to the word before it.
        if (BeginsNumber(Position) && !Sign.IsDash(Current))
        {
            return Position == start || !char.IsLetter(At(Position - 1));
        }

        return Sign.IsDash(Current) ? DashSeparates(start) : IsTo(Position);
    }

    /// <summary>The hyphen of "US-gal" does not separate.</summary>
    private bool DashSeparates(int start)
    {
        var next = At(Position + 1);
        return Position == start || char.IsWhiteSpace(At(Position - 1))
            || !char.IsLetter(next);
    }

    private bool ContinuesFigure(int start) => Current switch
    {
        >= '0' and <= '9' or '.' => true,
        ',' or '/' => IsDigit(At(Position - 1)) && IsDigit(At(Position + 1)),
        'e' or 'E' => IsDigit(At(Position - 1)) && IsExponent(Position + 1),
        '+' or '-' => Position > start && At(Position - 1) is 'e' or 'E',
        _ => char.IsNumber(Current),
    };

    private bool IsExponent(int i) => IsDigit(At(i)) || (At(i) is '+' or '-' && IsDigit(At(i + 1)));

    private bool BeginsNumber(int i)
    {
        i += Sign.IsDash(At(i)) ? 1 : 0;
        return char.IsNumber(At(i)) || (At(i) == '.' && IsDigit(At(i + 1)));
    }

    private bool IsTo(int i) =>
        At(i) is 't' or 'T' && At(i + 1) is 'o' or 'O'
        && char.IsWhiteSpace(At(i + 2)) && i > 0 && !char.IsLetter(At(i - 1));

    private static bool IsDigit(char c) => char.IsAsciiDigit(c);

    /// <summary>
    /// NUL beyond either end; a NUL within is no space, digit, dash or letter either.
    /// </summary>
    private char At(int i) => i >= 0 && i < text.Length ? text[i] : '\0';

    private TextPart? Part(int start)
    {
        var taken = text.AsSpan(start, Position - start).TrimEnd();
        return taken.IsEmpty ? null : new TextPart(start, taken.ToString());
    }
}
