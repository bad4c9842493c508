using System.Globalization;

namespace CareSheets.Proofing.Prose;

/// <summary>Running text to tokens, in one walk whose time grows with the length of the text.</summary>
internal static class ProseTokens
{
    private const string Fractions = "½¼¾⅓⅔";
    private static readonly double[] FractionValues = [0.5, 0.25, 0.75, 1.0 / 3, 2.0 / 3];

    /// <summary>A full stop after these ends no sentence.</summary>
    private static readonly HashSet<string> Abbreviations = Cues.Of(
        "sp spp cf aff st ca approx vs no e g i dr max min temp");

    public static List<ProseToken> Of(string text)
    {
        var tokens = new List<ProseToken>();
        for (var i = 0; i < text.Length;)
        {
            var c = text[i];
            if (char.IsWhiteSpace(c))
                i = Space(text, i, tokens);
            else if (char.IsAsciiDigit(c) || Fractions.Contains(c, StringComparison.Ordinal))
                i = Number(text, i, tokens);
            else if (char.IsLetter(c))
                i = Word(text, i, tokens);
            else
                i = Mark(text, i, tokens);
        }
        return tokens;
    }

    /// <summary>An empty line ends the sentence, as a heading has no full stop.</summary>
    private static int Space(string text, int at, List<ProseToken> tokens)
    {
        var (start, lines) = (at, 0);
        for (; at < text.Length && char.IsWhiteSpace(text[at]); at++)
            lines += text[at] == '\n' ? 1 : 0;
        if (lines > 1)
            tokens.Add(new ProseToken(TokenKind.Stop, "", start, 0, double.NaN));
        return at;
    }

    private static int Number(string text, int start, List<ProseToken> tokens)
    {
        var at = start;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || IsInside(text, at)))
            at++;
        var digits = text[start..at].Replace(",", "", StringComparison.Ordinal);
        var value = digits.Length is > 0 and <= 12 ? double.Parse(digits, CultureInfo.InvariantCulture) : 0;
        if (digits.Length > 12)
            value = double.NaN; // no figure of husbandry
        if (at < text.Length && Fractions.IndexOf(text[at]) is var which and >= 0)
        {
            value += FractionValues[which];
            at++;
        }
        else if (at + 1 < text.Length && text[at] == '/' && char.IsAsciiDigit(text[at + 1]) && at - start == 1)
        {
            value /= text[at + 1] - '0';
            at += 2;
        }
        tokens.Add(new ProseToken(TokenKind.Number, text[start..at], start, at - start, value));
        return at;
    }

    /// <summary>A point with a digit on both sides, once; a comma before three digits.</summary>
    private static bool IsInside(string text, int at)
    {
        bool Digit(int i) => i >= 0 && i < text.Length && char.IsAsciiDigit(text[i]);
        return text[at] switch
        {
            '.' => Digit(at - 1) && Digit(at + 1) && !(at > 1 && text[at - 2] == '.'),
            ',' => Digit(at - 1) && Digit(at + 1) && Digit(at + 2) && Digit(at + 3) && !Digit(at + 4),
            _ => false,
        };
    }

    private static int Word(string text, int start, List<ProseToken> tokens)
    {
        var at = start;
        while (at < text.Length && (char.IsLetter(text[at]) ||
            (text[at] is '\'' or '’' && at + 1 < text.Length && char.IsLetter(text[at + 1]))))
            at++;
        tokens.Add(new ProseToken(
            TokenKind.Word, text[start..at].ToLowerInvariant(), start, at - start, double.NaN));
        return at;
    }

    private static int Mark(string text, int at, List<ProseToken> tokens)
    {
        var ends = text[at] is '!' or '?' || (text[at] == '.' && EndsSentence(text, at, tokens));
        tokens.Add(new ProseToken(ends ? TokenKind.Stop : TokenKind.Mark, text[at].ToString(), at, 1, double.NaN));
        return at + 1;
    }

    private static bool EndsSentence(string text, int at, List<ProseToken> tokens)
    {
        var next = at + 1;
        while (next < text.Length && (char.IsWhiteSpace(text[next]) || text[next] is '"' or '”' or '’' or ')'))
            next++;
        return next == text.Length || (next > at + 1 && !char.IsLower(text[next]) &&
            !(tokens.Count > 0 && tokens[^1].End == at && Abbreviations.Contains(tokens[^1].Text)));
    }
}
