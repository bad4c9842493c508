namespace CareSheets.Names;

/// <summary>
/// What the form of a written name offends against, as far as the text alone can tell. Whether its
/// parentheses are right, or its ending, needs more than the text.
/// </summary>
public enum NameProblem
{
    /// <summary>A name above the species begins with a capital (Art. 4.1, 28).</summary>
    GenusWithoutCapital,

    /// <summary>An epithet never does, whatever the first publication did (Art. 5.1, 28).</summary>
    EpithetWithCapital,

    /// <summary>Only the 26 Latin letters (Art. 11.2, 27, 32.5.2).</summary>
    NotLatinLetters,

    /// <summary>Words of a name have two letters or more (Art. 11.8, 11.9.1).</summary>
    OneLetter,

    /// <summary>Parentheses that do not close or open (Art. 51.3).</summary>
    UnevenParentheses,

    /// <summary>The author stands after the name with no mark between (Art. 51.2).</summary>
    MarkBeforeAuthor,

    /// <summary>A comma stands between author and year (Recommendation 22A.2.1).</summary>
    NoCommaBeforeYear,

    /// <summary>A year alone tells nobody whose (Recommendation 22A).</summary>
    YearWithoutAuthor,

    /// <summary>Zoological names begin with 1758 (Art. 3, 11.1).</summary>
    YearTooEarly,

    /// <summary>A shortened genus is written in full where it stands first (Recommendation 25A).</summary>
    ShortGenus,
}
