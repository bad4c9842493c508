namespace CareSheets.Names.Matching;

/// <summary>Ways in which a written name leads to a species, the surest first.</summary>
public enum MatchRung
{
    /// <summary>The valid name, letter for letter.</summary>
    Exact,

    /// <summary>A name that it had before.</summary>
    FormerName,

    /// <summary>A spelling of either that the Code takes for the same word.</summary>
    Spelling,

    /// <summary>The same epithet in another genus.</summary>
    OtherGenus,

    /// <summary>Near by sound, by letters, or by letters that are misread for one another.</summary>
    Near,

    TradeCode,

    Vernacular,

    /// <summary>The genus, and nothing else.</summary>
    GenusOnly,
}
