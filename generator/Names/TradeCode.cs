using System.Text.RegularExpressions;

namespace CareSheets.Names;

/// <summary>
/// Codes under which the trade sells catfishes that had no name, or have several forms: L and LDA for
/// armoured suckermouths, C and CW for armoured catfishes. A code is a label: several can mean one
/// species, and one has meant two.
/// </summary>
public static partial class TradeCode
{
    /// <summary>In the form that entries use: letters, three digits or more, perhaps a letter: L046, LDA022.</summary>
    public static string Usual(string letters, string digits, string suffix) =>
        letters.ToUpperInvariant() + digits.TrimStart('0').PadLeft(3, '0') + suffix.ToLowerInvariant();

    /// <summary>As people write a code of the usual form: with the zeros before its number and without.</summary>
    public static IEnumerable<string> Spellings(string code)
    {
        var letters = code.TakeWhile(char.IsLetter).Count();
        return new[] { code, code[..letters] + code[letters..].TrimStart('0') }.Distinct();
    }

    /// <summary>The code that the text is and nothing besides, in its usual form; else nothing.</summary>
    public static string? Read(string text)
    {
        var codes = new List<string>();
        return string.IsNullOrWhiteSpace(TakeFrom(text, codes)) && codes.Count == 1 ? codes[0] : null;
    }

    /// <summary>The family of the fishes that codes of this kind are given to.</summary>
    public static string FamilyOf(string code) =>
        code.StartsWith('L') ? "Loricariidae" : "Callichthyidae";

    /// <summary>Takes the codes out of a text.</summary>
    public static string TakeFrom(string text, ICollection<string> codes) => Code().Replace(text, m =>
    {
        codes.Add(Usual(m.Groups[1].Value, m.Groups[2].Value, m.Groups[3].Value));
        return " ";
    });

    /// <summary>A single letter before one digit is left alone: it may be a size, a sex or a generation.</summary>
    [GeneratedRegex(@"(?<![\w.])(LDA|CW|L|C)[ -]?(?:no\.? ?)?(\d{2,4})([a-e]?)(?![\w.])", RegexOptions.IgnoreCase)]
    private static partial Regex Code();
}
