using System.Globalization;
using CareSheets.Arrivals;
using CareSheets.Names.Matching;

namespace CareSheets.PackingLists;

/// <summary>Why a line was taken, or what speaks for each species that it may be, in words.</summary>
public static class MatchText
{
    public static string Why(MatchedLine line) => line.Taken switch
    {
        NameTaken.Exact => "by its valid name",
        NameTaken.FormerName => $"by its former name {line.Match.Taken!.By}",
        NameTaken.Spelling => $"as another spelling of {line.Match.Taken!.By} (ICZN Art. 34.2, 58)",
        NameTaken.Answered => "as answered before for this supplier",
        NameTaken.ByHand => "by hand",
        null => Doubted(line) + Codes(line),
    };

    public static string Why(MatchCandidate candidate) => string.Create(
        CultureInfo.InvariantCulture,
        $"{candidate.Species.Valid}, {Rung(candidate)}, sureness {candidate.Sureness:0.00}");

    /// <summary>A code that nobody has here is a clue all the same.</summary>
    private static string Codes(MatchedLine line) =>
        line.Line.Reading.TradeCodes.Count == 0 || line.Match.Others.Any(c => c.Rung == MatchRung.TradeCode)
            ? ""
            : $"; no entry has the code {string.Join(", ", line.Line.Reading.TradeCodes)}";

    private static string Doubted(MatchedLine line) => line.NewName is { } name
        ? $"a new name; if it is right, draft its entry: arrival \"{name}\""
        : line.Match.Doubt == Doubt.OnlyLike && !line.Likely.Any() ? Doubted(Doubt.NothingLikeIt)
        : Doubted(line.Match.Doubt);

    private static string Doubted(Doubt doubt) => doubt switch
    {
        Doubt.None or Doubt.OnlyLike => "only like a known name",
        Doubt.NothingLikeIt => "nothing near to it is known here",
        Doubt.Qualified => "the supplier is not sure (cf., aff., sp. or ?)",
        Doubt.Hybrid => "a hybrid",
        Doubt.TwoTargets => "more than one species fits",
        Doubt.Contradiction => "what stands beside the name means another species",
        Doubt.GenusAlone => "a genus, and no species",
        Doubt.GenusExists => "the genus exists, and has no such species here",
    };

    private static string Rung(MatchCandidate candidate) => candidate.Rung switch
    {
        MatchRung.Exact => "valid name",
        MatchRung.FormerName => $"former name {candidate.By}",
        MatchRung.Spelling => $"spelling of {candidate.By}",
        MatchRung.OtherGenus => $"same epithet in {candidate.By}",
        MatchRung.Near => $"near {candidate.By}",
        MatchRung.TradeCode => $"code {candidate.By}",
        MatchRung.Vernacular => $"called {candidate.By}",
        MatchRung.GenusOnly => "same genus",
    };
}
