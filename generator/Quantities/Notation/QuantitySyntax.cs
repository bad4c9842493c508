using System.Buffers;
using System.Globalization;

namespace CareSheets.Quantities.Notation;

/// <summary>
/// The shape of a written range: [sign] [word] figure [unit] [dash figure [unit]]. What the words
/// mean is left to <see cref="QuantityMeaning"/>.
/// </summary>
internal sealed class QuantitySyntax(string text, QuantityProblems problems)
{
    /// <summary>
    /// More digits are a slip or an attack; nobody measures water to a part in 10¹².
    /// </summary>
    private const int MostDigits = 12;

    private static readonly SearchValues<char> DigitsAndPoint = SearchValues.Create("0123456789.");

    private readonly QuantityScanner _scanner = new(text);

    public ParseResult<QuantityParts> Read()
    {
        var bound = _scanner.ReadBound();
        if (_scanner.AtEnd)
        {
            return problems.NothingAfter(bound);
        }

        var prefix = _scanner.ReadPrefix();
        bound = bound == Bound.None ? _scanner.ReadBound() : bound;
        return ReadNumber().Then(first => ReadRest(new QuantityParts
        {
            Bound = bound,
            Prefix = prefix,
            First = first,
            FirstUnit = _scanner.ReadUnit(),
        }));
    }

    private ParseResult<QuantityParts> ReadRest(QuantityParts parts)
    {
        if (_scanner.AtEnd)
        {
            return parts;
        }

        var hasSeparator = _scanner.ReadSeparator();
        if (_scanner.AtNumber() && (!hasSeparator || parts.Bound != Bound.None))
        {
            return problems.TooManyNumbers(_scanner.ReadFigure());
        }

        return ReadNumber().Then(second => ReadEnd(parts with
        {
            Second = second,
            SecondUnit = _scanner.ReadUnit(),
        }));
    }

    private ParseResult<QuantityParts> ReadEnd(QuantityParts parts)
    {
        if (_scanner.AtEnd)
        {
            return parts;
        }

        _scanner.ReadSeparator();
        return _scanner.AtNumber()
            ? problems.TooManyNumbers(_scanner.ReadFigure())
            : problems.NotANumber(_scanner.Position);
    }

    private ParseResult<NumberPart> ReadNumber()
    {
        if (!_scanner.AtNumber())
        {
            return problems.NotANumber(_scanner.Position);
        }

        var figure = _scanner.ReadFigure();
        if (IsPlain(figure.Text))
        {
            return Number(figure);
        }

        return figure.Text.Contains(',', StringComparison.Ordinal)
            ? problems.CommaDecimal(figure)
            : problems.NotANumber(figure);
    }

    /// <summary>[minus] digits [point digits] or [minus] point digits, and not too many.</summary>
    private static bool IsPlain(string figure)
    {
        var digits = figure.AsSpan(Sign.IsDash(figure[0]) ? 1 : 0);
        var point = digits.IndexOf('.');
        return digits.Length <= (point < 0 ? MostDigits : MostDigits + 1)
            && !digits.ContainsAnyExcept(DigitsAndPoint)
            && digits[(point + 1)..].IndexOf('.') < 0
            && digits[^1] != '.';
    }

    private static NumberPart Number(TextPart figure)
    {
        var isNegative = Sign.IsDash(figure.Text[0]);
        var digits = figure.Text[(isNegative ? 1 : 0)..].TrimStart('0');
        digits = digits is "" || digits[0] == '.' ? "0" + digits : digits;
        var value = double.Parse(
            digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return isNegative && value != 0
            ? new NumberPart(figure.Index, figure.End, Sign.Minus + digits, -value)
            : new NumberPart(figure.Index, figure.End, digits, value);
    }
}
