using System.Text;

namespace CareSheets.Quantities.Units;

/// <summary>How a unit is spelled once the differences that carry no meaning are gone.</summary>
internal static class Spelling
{
    /// <summary>No unit is spelled longer; anything beyond is not looked up at all.</summary>
    private const int Longest = 40;

    /// <summary>
    /// Case, spaces, full stops and hyphens dropped, look-alike characters made one.
    /// </summary>
    /// <returns>The empty string for what is no unit anyway.</returns>
    public static string Plain(string typed)
    {
        if (typed.Length > Longest)
        {
            return string.Empty;
        }

        var plain = new StringBuilder(typed.Length);
        foreach (var c in typed)
        {
            if (!char.IsWhiteSpace(c) && c is not ('.' or '-'))
            {
                plain.Append(Fold(c));
            }
        }

        return plain.ToString();
    }

    private static string Fold(char c) => c switch
    {
        'º' or '˚' or '∘' => "°",
        '\u2103' => "°c", // one-character degree Celsius
        '\u2109' => "°f",
        '\u00B5' or '\u03BC' => "u", // micro sign, Greek mu
        '₃' or '³' => "3",
        '₄' => "4",
        '″' or '”' or '“' => "\"",
        '′' or '’' => "'",
        _ => char.ToLowerInvariant(c).ToString(),
    };
}
