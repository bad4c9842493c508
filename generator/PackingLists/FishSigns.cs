using System.Text.RegularExpressions;
using CareSheets.Names;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>
/// What speaks for fish in a line, and what against. Nothing is left out for what it lacks while anything in it may
/// be a fish: a batch too many is taken out in a moment, and one that is lost is found by nobody.
/// </summary>
internal sealed partial class FishSigns
{
    private readonly IReadOnlyList<ListWord> _known;
    private readonly MatchedLine _line;
    private readonly string _text;

    /// <param name="line">The line as it was read.</param>
    /// <param name="text">The cells that hold its names, as written.</param>
    public FishSigns(MatchedLine line, string text)
    {
        (_line, _text) = (line, text);
        _known = [.. Words().Matches(text).Select(w => ListWords.Find(w.Value)).OfType<ListWord>()];
    }

    /// <summary>Why the line is no fish; nothing where it may be.</summary>
    /// <param name="hasCounts">Whether most lines of the list say how many.</param>
    public SkipReason? Against(bool hasCounts)
    {
        if (_line.Entry is not null || IsNamed)
            return null;
        if (_known.Any(w => w.IsTotal))
            return SkipReason.NotFish;
        if (IsCalled)
            return IsOfGroups ? SkipReason.Heading : null;
        if (_known.Any(w => w.Kind == WordKind.Noise) && !HasSize)
            return SkipReason.NotFish;
        if (IsHeading)
            return SkipReason.Heading;
        if (_known.Any(w => w.Kind == WordKind.Remark) && Weak < 2)
            return SkipReason.Remark;
        return hasCounts && Weak == 0 && !_known.Any(w => w.IsGroup) && _line.Perhaps.Count == 0
            ? SkipReason.NoSign
            : null;
    }

    /// <summary>A code, a genus, or a scientific name that is known or like a known one.</summary>
    private bool IsNamed => _line.Line.Reading.TradeCodes.Count > 0 || IsLatin ||
        GenusTable.Known.Find(_line.Line.Reading.Genus) is not null ||
        _line.Match.Others.Any(c => c.Rung < MatchRung.Vernacular);

    /// <summary>Two words of which the second ends as epithets do.</summary>
    private bool IsLatin => _line.Line.Reading is { Epithets: [var epithet, ..], Genus.Length: > 3, Rest: "" } &&
        epithet.Length > 4 && LatinEnding().IsMatch(epithet) && ListWords.Find(epithet) is null;

    private bool IsCalled => _line.Match.Others.Any(
        c => c.Rung == MatchRung.Vernacular && c.Sureness >= MatchedLine.LeastSureness);

    private bool HasSize => _line.Line.Size.Length > 0;

    /// <summary>Signs of which one may stand in a sentence, and two tell of fish.</summary>
    private int Weak => new[]
    {
        HasSize, _line.Line.Count is not null, _known.Any(w => w is { Kind: WordKind.Everyday, IsGroup: false }),
        _line.Line.Sex.Length + _line.Line.Provenance.Length > 0, _line.Line.IsLikeFish,
    }.Count(isSo => isSo);

    /// <summary>Between stars or strokes, before a colon, or nothing but groups of fish.</summary>
    private bool IsHeading => !_text.Any(char.IsAsciiDigit) &&
        (Framed().IsMatch(_text) || _text.EndsWith(':') || IsOfGroups);

    private bool IsOfGroups => _line.Line is { Count: null, Size: "" } &&
        Words().Matches(_text).Select(w => w.Value.ToLowerInvariant())
            .All(w => w is "and" or "und" or "et" or "y" || ListWords.Find(w) is { IsGroup: true });

    [GeneratedRegex(@"\p{L}[\p{L}-]*")]
    private static partial Regex Words();

    [GeneratedRegex(@"^\W*([*=#~_+–-])\1*\s.*\s\1+\W*$|^([*=#~_+–-])\2.*\2{2}$")]
    private static partial Regex Framed();

    [GeneratedRegex("(?:us|is|um|i|ae|a|ensis|oides|orum|arum)$")]
    private static partial Regex LatinEnding();
}
