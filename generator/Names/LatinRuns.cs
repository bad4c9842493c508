using System.Text.RegularExpressions;

namespace CareSheets.Names;

/// <summary>
/// Finds the scientific names of genera and species in a text of everyday English, for they are set in another
/// face than the text around them (International Code of Zoological Nomenclature, 4th edition, 1999, Appendix B,
/// recommendation 6). Only genera that the program knows are found; a letter and a full stop stand for a genus
/// that the text has named before.
/// </summary>
public static partial class LatinRuns
{
    /// <summary>Words that follow a genus in English and are no epithets. From memory, as the trade writes.</summary>
    private static readonly HashSet<string> English = new(
        ("about above after against all also and another any are beside between both but can catfish come comes " +
        "cross crosses did does each every female females fish fishes for from get group grow grows had has have " +
        "here hybrid hybrids into its keep keeps kept less like live lives male males may might more most must need " +
        "needs nor not now only other over relatives sold some species such than that the their then there these " +
        "they this those too under very was well were when where which while who whose will with within without " +
        "would young").Split(' '), StringComparer.Ordinal);

    /// <summary>The runs of the text, in order; together they are the text.</summary>
    public static IReadOnlyList<TextRun> Of(string text)
    {
        var runs = new List<TextRun>();
        var named = new HashSet<char>();
        var plain = 0;
        foreach (Match match in Name().Matches(text))
        {
            var length = LatinLength(match, named);
            if (length == 0)
                continue;
            if (match.Index > plain)
                runs.Add(new TextRun(text[plain..match.Index], false));
            plain = match.Index + length;
            runs.Add(new TextRun(text[match.Index..plain], true));
        }
        if (plain < text.Length || text.Length == 0)
            runs.Add(new TextRun(text[plain..], false));
        return runs;
    }

    private static int LatinLength(Match match, HashSet<char> named)
    {
        var (genus, epithet) = (match.Groups["genus"].Value, match.Groups["epithet"]);
        var isEpithet = epithet.Success && !English.Contains(epithet.Value);
        if (genus.EndsWith('.'))
            return isEpithet && named.Contains(genus[0]) ? match.Length : 0;
        if (GenusTable.Known.Find(genus) is null)
            return 0;
        named.Add(genus[0]);
        return isEpithet ? match.Length : genus.Length;
    }

    [GeneratedRegex(@"\b(?<genus>[A-Z](?:[a-z]{2,}|\.))(?:[ \u00A0](?<epithet>[a-z]{3,}(?:-[a-z]{3,})?)\b)?")]
    private static partial Regex Name();
}
